/**
 * Headless commands: takes a command line, gives text, JSON, pages and pictures, and an exit code (0 good, 1 the check
 * did not hold, 2 bad input). May know everything but the window.
 */
package provingyard.cli;
