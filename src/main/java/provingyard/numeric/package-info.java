/**
 * Takes numbers, gives numbers: deterministic functions and named random streams. Must not know any other package of
 * the program.
 */
package provingyard.numeric;
