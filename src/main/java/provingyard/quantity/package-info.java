/**
 * Units at the edges: takes texts such as {@code "18 gpm"}, gives SI doubles, and shows SI doubles in US or metric
 * units. Must not know any other package of the program.
 */
package provingyard.quantity;
