package provingyard.picture;

/** Walks that carried ice of irrigation water in a season: hatched in the colour of ice. px. */
final class IcedArt {

    private static final double STEP = 7;

    private final YardShapes shapes;
    private final View view;

    IcedArt(YardShapes shapes, View view) {
        this.shapes = shapes;
        this.view = view;
    }

    void draw(Surface s) {
        for (String id : view.marks().iced()) {
            Path outline = shapes.outline(id);
            if (outline != null) {
                hatch(s, outline.mapped(view.scale(), -view.scale(), view.x(0), view.y(0)));
            }
        }
    }

    private void hatch(Surface s, Path area) {
        double width = view.theme().lines();
        Colour ice = view.theme().at(Tone.ICE);
        double[] b = area.bounds();
        s.save();
        s.clip(area);
        s.fill(area, ice.fade(0.28));
        Path.Builder lines = Path.builder();
        double height = b[3] - b[1];
        for (double x = b[0] - height; x < b[2]; x += STEP * width) {
            lines.moveTo(x, b[3]);
            lines.lineTo(x + height, b[1]);
        }
        s.stroke(lines.build(), Pen.of(ice.fade(0.6), 1.6 * width));
        s.restore();
    }
}
