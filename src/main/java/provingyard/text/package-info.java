/**
 * Sentences by key in both languages: takes a key and its values, gives a text. Must not know any other package of the
 * program.
 */
package provingyard.text;
