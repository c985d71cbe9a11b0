package provingyard.report;

import provingyard.study.Debrief;

/**
 * What pages tell of.
 *
 * @param debrief what is known of a season; what is empty there is left out
 * @param setUp how its set-up was called, such as a file's name; empty where it has no name
 */
public record Story(Debrief debrief, String setUp) {}
