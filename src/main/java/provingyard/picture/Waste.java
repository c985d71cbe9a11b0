package provingyard.picture;

/** Where wasted water goes; each has a tone and a pattern, so that it reads without hue. */
public enum Waste {
    DRIFT(Tone.DRIFT, "drift", "deriva"),
    OVERSPRAY(Tone.OVERSPRAY, "overspray", "fuera de zona"),
    RUNOFF(Tone.RUNOFF, "runoff", "escorrentía"),
    BELOW(Tone.BELOW, "below the roots", "bajo las raíces"),
    LEAK(Tone.LEAK, "leak", "fuga");

    private final Tone tone;
    private final String en;
    private final String es;

    Waste(Tone tone, String en, String es) {
        this.tone = tone;
        this.en = en;
        this.es = es;
    }

    public Tone tone() {
        return tone;
    }

    /** The word for it. */
    public String word(String language) {
        return "es".equals(language) ? es : en;
    }

    /** Fills a rectangle: dots, 45 degree hatch, level lines, solid, cross-hatch. px. */
    public void fill(Surface s, double x, double y, double w, double h, Theme theme) {
        if (w <= 0 || h <= 0) {
            return;
        }
        Colour c = theme.at(tone);
        Colour paper = theme.at(Tone.PAPER);
        s.fill(Path.rectangle(x, y, w, h), c);
        s.save();
        s.clip(Path.rectangle(x, y, w, h));
        Colour light = paper.fade(0.75);
        switch (this) {
            case DRIFT -> s.fill(dots(x, y, w, h), paper.fade(0.85));
            case OVERSPRAY -> s.stroke(diagonals(x, y, w, h, 7, true), Pen.of(light, 2));
            case RUNOFF -> s.stroke(levels(x, y, w, h), Pen.of(paper.fade(0.85), 2));
            case BELOW -> {
                // Solid.
            }
            case LEAK -> {
                Pen pen = Pen.of(light, 1.5);
                s.stroke(diagonals(x, y, w, h, 7, true), pen);
                s.stroke(diagonals(x, y, w, h, 7, false), pen);
            }
        }
        s.restore();
    }

    private static Path dots(double x, double y, double w, double h) {
        Path.Builder b = Path.builder();
        int row = 0;
        for (double v = y + 3; v < y + h; v += 4, row++) {
            for (double u = x + (row % 2 == 0 ? 2 : 5); u < x + w + 2; u += 6) {
                b.circle(u, v, 1.1);
            }
        }
        return b.build();
    }

    private static Path levels(double x, double y, double w, double h) {
        Path.Builder b = Path.builder();
        for (double v = y + 3; v < y + h; v += 5) {
            b.append(Path.segment(x, v, x + w, v));
        }
        return b.build();
    }

    private static Path diagonals(double x, double y, double w, double h, double step, boolean falling) {
        Path.Builder b = Path.builder();
        for (double d = x - h; d < x + w + h; d += step) {
            b.moveTo(falling ? d : d + h, y);
            b.lineTo(falling ? d + h : d, y + h);
        }
        return b.build();
    }
}
