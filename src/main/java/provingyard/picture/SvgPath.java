package provingyard.picture;

import provingyard.numeric.Deterministic;

/**
 * Reads SVG path strings: M L H V C Q A Z, absolute and relative. Elliptical arcs follow the conversion from end points
 * to centre of SVG 2, section B.2.4 (from memory); only circles' arcs (equal radii) are taken, as all icons use them.
 */
final class SvgPath {

    private final String d;
    private final Path.Builder out = Path.builder();
    private int at;
    private double x;
    private double y;
    private double startX;
    private double startY;

    private SvgPath(String d) {
        this.d = d;
    }

    static Path parse(String d) {
        SvgPath p = new SvgPath(d);
        p.read();
        return p.out.build();
    }

    private void read() {
        char command = 0;
        skip();
        while (at < d.length()) {
            char c = d.charAt(at);
            if (Character.isLetter(c)) {
                command = c;
                at++;
            } else if (command == 'M') {
                command = 'L';
            } else if (command == 'm') {
                command = 'l';
            } else if (command == 0) {
                throw new IllegalArgumentException("path must begin with a command: " + d);
            }
            piece(command);
            skip();
        }
    }

    private void piece(char command) {
        boolean relative = Character.isLowerCase(command);
        double ox = relative ? x : 0;
        double oy = relative ? y : 0;
        switch (Character.toUpperCase(command)) {
            case 'M' -> {
                go(ox + number(), oy + number());
                startX = x;
                startY = y;
                out.moveTo(x, y);
            }
            case 'L' -> line(ox + number(), oy + number());
            case 'H' -> line(ox + number(), y);
            case 'V' -> line(x, oy + number());
            case 'C' -> {
                double ax = ox + number();
                double ay = oy + number();
                double bx = ox + number();
                double by = oy + number();
                go(ox + number(), oy + number());
                out.cubicTo(ax, ay, bx, by, x, y);
            }
            case 'Q' -> {
                double cx = ox + number();
                double cy = oy + number();
                go(ox + number(), oy + number());
                out.quadTo(cx, cy, x, y);
            }
            case 'A' -> {
                double rx = number();
                double ry = number();
                number();
                boolean large = flag();
                boolean sweep = flag();
                arc(rx, ry, large, sweep, ox + number(), oy + number());
            }
            case 'Z' -> {
                out.close();
                go(startX, startY);
            }
            default -> throw new IllegalArgumentException("unknown path command " + command + " in " + d);
        }
    }

    private void line(double toX, double toY) {
        go(toX, toY);
        out.lineTo(x, y);
    }

    private void go(double toX, double toY) {
        x = toX;
        y = toY;
    }

    private void arc(double rx, double ry, boolean large, boolean sweep, double toX, double toY) {
        if (rx != ry) {
            throw new IllegalArgumentException("only arcs of circles: " + d);
        }
        double dx = (toX - x) / 2;
        double dy = (toY - y) / 2;
        double half2 = dx * dx + dy * dy;
        double r = Math.max(rx, Math.sqrt(half2));
        if (half2 == 0) {
            return;
        }
        double k = Math.sqrt(Math.max(0, r * r / half2 - 1)) * (large == sweep ? -1 : 1);
        double cx = x + dx - k * dy;
        double cy = y + dy + k * dx;
        double from = Deterministic.atan2(y - cy, x - cx);
        double turn = Deterministic.atan2(toY - cy, toX - cx) - from;
        if (sweep && turn < 0) {
            turn += 2 * Math.PI;
        } else if (!sweep && turn > 0) {
            turn -= 2 * Math.PI;
        }
        out.arc(cx, cy, r, from, turn);
        go(toX, toY);
    }

    private void skip() {
        while (at < d.length() && (Character.isWhitespace(d.charAt(at)) || d.charAt(at) == ',')) {
            at++;
        }
    }

    private boolean flag() {
        skip();
        return d.charAt(at++) == '1';
    }

    private double number() {
        skip();
        int from = at;
        if (at < d.length() && (d.charAt(at) == '-' || d.charAt(at) == '+')) {
            at++;
        }
        boolean dot = false;
        while (at < d.length() && (Character.isDigit(d.charAt(at)) || d.charAt(at) == '.' && !dot)) {
            dot |= d.charAt(at) == '.';
            at++;
        }
        if (from == at) {
            throw new IllegalArgumentException("number expected at " + at + " in " + d);
        }
        return Double.parseDouble(d.substring(from, at));
    }
}
