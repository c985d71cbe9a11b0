package provingyard.picture;

/** Notes and numbered readings laid on the plan, their leaders ending on the thing. px. */
final class NoteArt {

    private final View view;
    private final Theme theme;

    NoteArt(View view) {
        this.view = view;
        this.theme = view.theme();
    }

    void draw(Surface s) {
        view.marks().notes().forEach(n -> note(s, n));
        // All leaders first: none crosses the words of another pin.
        if (theme != Theme.PROJECTOR) {
            view.marks().pins().forEach(p -> leader(s, p));
        }
        view.marks().pins().forEach(p -> pin(s, p));
    }

    private void leader(Surface s, Marks.Pin p) {
        Colour ink = theme.at(Tone.INK);
        double x = view.x(p.at().x());
        double y = view.y(p.at().y());
        s.stroke(Path.segment(x, y, x + p.dx() + 13, y + p.dy()), Pen.of(ink, 1.6));
        s.fill(Path.circle(x, y, 3), ink);
        s.stroke(Path.circle(x, y, 3), Pen.of(theme.at(Tone.SHEET), 1));
    }

    private void note(Surface s, Marks.Note n) {
        Colour edge = theme.at(
                switch (n.meaning()) {
                    case ALARM -> Tone.PLATE_ALARM;
                    case ICE -> Tone.PLATE_ICE;
                    case WATER -> Tone.WATER;
                });
        boolean ice = n.meaning() == Marks.Meaning.ICE;
        double text = ice ? 38 : 12;
        double w = Math.max(s.textWidth(n.title(), FontRole.BOLD, 13), s.textWidth(n.line(), FontRole.TEXT, 12))
                + text
                + 12;
        double h = 40;
        double x = view.x(n.at().x());
        double y = view.y(n.at().y());
        double left = Math.max(
                view.free().left() + 6, Math.min(view.width() - view.free().right() - w - 6, x + n.dx()));
        double top = Math.max(
                view.free().top() + 6, Math.min(view.height() - view.free().bottom() - h - 6, y + n.dy()));
        double endX = Math.max(left + 2, Math.min(left + w - 2, x));
        double endY = Math.max(top + 2, Math.min(top + h - 2, y));
        s.stroke(Path.segment(x, y, endX, endY), Pen.of(theme.at(Tone.HALO).fade(0.8), 3.4));
        s.stroke(Path.segment(x, y, endX, endY), Pen.of(edge, 1.5));
        s.fill(Path.circle(x, y, 2.4), edge);
        s.fill(Path.rounded(left, top + 2, w, h, 7), Colour.BLACK.fade(0.12));
        s.fill(Path.rounded(left, top, w, h, 7), theme.at(Tone.PLATE).fade(0.97));
        s.fill(Path.rounded(left, top, 3.5, h, 1.7), edge);
        if (ice) {
            Icons.get("ice").draw(s, left + 22, top + h / 2, 20, edge);
        }
        s.text(n.title(), left + text, top + 17, TextStyle.of(FontRole.BOLD, 13, edge));
        s.text(n.line(), left + text, top + 32.5, TextStyle.of(FontRole.TEXT, 12, theme.at(Tone.INK)));
    }

    private void pin(Surface s, Marks.Pin p) {
        Colour ink = theme.at(Tone.INK);
        double x = view.x(p.at().x());
        double y = view.y(p.at().y());
        if (theme == Theme.PROJECTOR) {
            shape(s, p, x, y);
            return;
        }
        double left = x + p.dx();
        double cy = y + p.dy();
        double big = Math.max(1, view.letters(1));
        double text = 13 * big;
        double end = 13 * big;
        double w = s.textWidth(p.text(), FontRole.STRONG, text) + 38 * big;
        Path pill = Path.rounded(left, cy - end, w, 2 * end, end);
        s.fill(pill, theme.at(Tone.SHEET));
        s.stroke(pill, Pen.of(ink, 1.4));
        s.fill(Path.circle(left + end, cy, 10 * big), ink);
        TextStyle number = TextStyle.of(FontRole.BOLD, 12.5 * big, theme.at(Tone.SHEET));
        s.text(Integer.toString(p.number()), left + end, cy + 4.4 * big, number.middle());
        s.text(p.text(), left + 28 * big, cy + 4.6 * big, TextStyle.of(FontRole.STRONG, text, ink));
    }

    /** On the wall, readings are told apart by shape: circle, square, diamond, triangle, with their number. */
    private void shape(Surface s, Marks.Pin p, double x, double y) {
        double r = theme.marker() / 2;
        Path outline =
                switch (Math.floorMod(p.number() - 1, 4)) {
                    case 0 -> Path.circle(x, y, r);
                    case 1 -> Path.rectangle(x - r * 0.92, y - r * 0.92, r * 1.84, r * 1.84);
                    case 2 -> Path.svg("M0 -1.2L1.2 0L0 1.2L-1.2 0Z").mapped(r, r, x, y);
                    default -> Path.svg("M0 -1.2L1.18 .86H-1.18Z").mapped(r, r, x, y);
                };
        double down = Math.floorMod(p.number() - 1, 4) == 3 ? 14 : 9.5;
        s.fill(outline, theme.at(Tone.SHEET));
        s.stroke(outline, Pen.of(theme.at(Tone.INK), 4));
        s.text(
                Integer.toString(p.number()),
                x,
                y + down,
                TextStyle.of(FontRole.BOLD, 26, theme.at(Tone.INK)).middle());
    }
}
