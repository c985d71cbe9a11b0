/**
 * Many seasons: takes a site and set-ups, gives the clock alone, the mark and what a season is worth beside them. Must
 * not know the screen, reports or class.
 */
package provingyard.study;
