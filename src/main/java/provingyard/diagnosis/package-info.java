/**
 * Finding a fault: hypotheses and their belief, what a test is expected to tell, the order an expert would test in, and
 * the score of a service call. Takes predicted readings as numbers, whoever computes them, and gives values; every
 * rating uses what the trainee was shown and nothing else. Must not know studies, pages or the screen.
 */
package provingyard.diagnosis;
