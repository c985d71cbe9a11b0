package provingyard.picture;

/** Walks paths that are known to have straight pieces only. */
interface LineWalker extends Path.Walker {

    @Override
    default void quadTo(double cx, double cy, double x, double y) {
        throw new IllegalStateException("straight pieces only");
    }

    @Override
    default void cubicTo(double ax, double ay, double bx, double by, double x, double y) {
        throw new IllegalStateException("straight pieces only");
    }

    @Override
    default void close() {}
}
