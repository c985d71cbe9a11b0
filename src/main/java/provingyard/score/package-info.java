/**
 * Loss and score as sums of named entries: takes a season's outcome and the lesson's weights, gives entries that say
 * what they cost and why. Must not know the world, set-ups or the screen.
 */
package provingyard.score;
