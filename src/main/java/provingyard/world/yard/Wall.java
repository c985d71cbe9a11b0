package provingyard.world.yard;

/**
 * A wall as seen from a point.
 *
 * @param structure index of its structure in the plan
 * @param distance m from the point
 * @param faces bearing in degrees toward which the wall's side at the point faces
 * @param height m
 * @param heated it is a heated building's
 */
public record Wall(int structure, double distance, double faces, double height, boolean heated) {}
