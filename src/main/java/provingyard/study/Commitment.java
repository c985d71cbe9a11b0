package provingyard.study;

/**
 * What a trainee would change, named before the debrief opens.
 *
 * @param choice the one choice that they would change; null when they would change nothing
 * @param why in their own words, may be empty
 */
public record Commitment(Choice choice, String why) {}
