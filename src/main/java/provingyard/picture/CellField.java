package provingyard.picture;

/**
 * A value per ground cell, for an overlay.
 *
 * @param nx cells east
 * @param ny cells north
 * @param values row by row from the south
 */
public record CellField(int nx, int ny, float[] values) {

    public CellField {
        if (values.length != nx * ny) {
            throw new IllegalArgumentException("values do not fill " + nx + " x " + ny);
        }
    }

    float at(int column, int row) {
        return values[Math.max(0, Math.min(ny - 1, row)) * nx + Math.max(0, Math.min(nx - 1, column))];
    }
}
