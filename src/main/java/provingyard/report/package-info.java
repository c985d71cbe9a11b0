/**
 * Pages for people: takes a lived season and its standing, gives self-contained files. Must not know the world or the
 * window.
 */
package provingyard.report;
