/**
 * Who learns on this machine and how far they came: one small file for each, kept whole or not touched at all. Knows
 * quantity, scenario and setup.
 */
package provingyard.learner;
