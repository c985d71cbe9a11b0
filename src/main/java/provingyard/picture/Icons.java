package provingyard.picture;

import java.util.LinkedHashMap;
import java.util.Map;
import provingyard.scenario.SensorKind;

/** The program's icons: SVG path strings on a grid of 24, for any back end. */
public final class Icons {

    private static final Map<String, Icon> ALL = new LinkedHashMap<>();

    private Icons() {}

    /**
     * An icon of at most two outlines.
     *
     * @param fill filled, even-odd; may be empty
     * @param line stroked 2 wide with round ends and corners; may be empty
     */
    public record Icon(String name, String fill, String line) {

        /** Draws the icon centred on a place, its grid as wide as {@code size} px. */
        public void draw(Surface s, double x, double y, double size, Colour colour) {
            double k = size / 24;
            if (!fill.isEmpty()) {
                s.fillEvenOdd(Path.svg(fill).mapped(k, k, x - size / 2, y - size / 2), colour);
            }
            if (!line.isEmpty()) {
                s.stroke(
                        Path.svg(line).mapped(k, k, x - size / 2, y - size / 2),
                        Pen.of(colour, 2 * k).round());
            }
        }
    }

    static {
        add(
                "rain",
                "M12 1C12 1 7.6 6.3 7.6 9A4.4 4.4 0 0 0 16.4 9C16.4 6.3 12 1 12 1ZM5.2 15H18.8A1.5 1.5 0"
                        + " 0 1 18.8 18H5.2A1.5 1.5 0 0 1 5.2 15ZM8.2 20H15.8A1.5 1.5 0 0 1 15.8 23H8.2A1.5 1.5 0"
                        + " 0 1 8.2 20Z",
                "");
        add(
                "wind",
                "M1 3.4H10.4A4.7 4.7 0 0 1 1 3.4ZM23 12.6H13.6A4.7 4.7 0 0 1 23 12.6ZM10.9 7H13.1V21H17"
                        + "V23H7V21H10.9Z",
                "M5.7 7.2L12 8.4L18.3 8.8");
        add(
                "freeze",
                "M10.6 9.5H13.4V15.6A4 4 0 1 1 10.6 15.6Z",
                "M12 10V1.5M12 10L4.6 5.8M12 10L19.4 5.8M12 10L5 13.2M12 10L19 13.2M9.9 2.4L12 4.4L14.1" + " 2.4");
        add(
                "flow",
                "M1 9.5H23V19.5H1ZM5.2 11.6L8.1 14.5L5.2 17.4H8.2L11.1 14.5L8.2 11.6ZM12.4 11.6L15.3"
                        + " 14.5L12.4 17.4H15.4L18.3 14.5L15.4 11.6ZM7.4 2H16.6V5H13.6V8.3H10.4V5H7.4Z",
                "");
        add(
                "soil",
                "M8.2 1.5H15.8V6H8.2ZM1 7.6H23V10H1ZM4.4 11.4H7.4V18.2L5.9 20.6L4.4 18.2ZM10.5 11.4H13.5"
                        + "V20.8L12 23.2L10.5 20.8ZM16.6 11.4H19.6V18.2L18.1 20.6L16.6 18.2Z",
                "");
        add(
                "meter",
                "M2 5H22V19H2ZM4 7V13H7.6V7ZM8.6 7V13H12.2V7ZM13.2 7V13H20V7ZM4 15V17H13V15ZM16.5 14.4"
                        + "L18.6 16L16.5 17.6Z",
                "");
        add("key", "M4 1.5H20V4.5H13.5V15H10.5V4.5H4ZM7 14.5H17V22.5H14V17.5H10V22.5H7Z", "");
        add("zone", "M9.8 13.5H14.2V23H9.8Z", "M12 11L3 7.5M12 11L6.4 3.2M12 11V1.5M12 11L17.6 3.2M12 11L21 7.5");
        add(
                "gauge",
                "M5 11.5H8.4V16.6A3.6 3.6 0 0 0 15.6 16.6V5.5H19V17A7 7 0 0 1 5 17Z",
                "M5.9 2V9M18.1 1.5V3.5M21.2 5.5H23M21.2 11.5H23M1 11.5H2.8");
        add(
                "ohms",
                "",
                "M1.5 21V12H4.5C4.5 4 10.5 4 10.5 12C10.5 15 7.5 15 7.5 12C7.5 4 13.5 4 13.5 12C13.5 15"
                        + " 10.5 15 10.5 12C10.5 4 16.5 4 16.5 12C16.5 15 13.5 15 13.5 12C13.5 4 19.5 4 19.5 12"
                        + "H22.5V21");
        add(
                "log",
                "M4 1.5H20V22.5L17.3 20.6L14.7 22.5L12 20.6L9.3 22.5L6.7 20.6L4 22.5ZM6.5 5V7H17.5V5Z"
                        + "M6.5 9V11H13V9ZM6.5 13V15H17.5V13Z",
                "");
        add(
                "look",
                "M5 4.2C5 1.6 9.6 1.4 10 5C10.3 8 9.4 9.8 9.2 11.6H5.4C5.3 9 5 7 5 4.2ZM5.5 13.2H9.1"
                        + "V14.6A1.8 1.8 0 0 1 5.5 14.6ZM14 10.2C14.4 6.6 19 6.8 19 9.4C19 12.2 18.7 14.2 18.6"
                        + " 16.8H14.8C14.6 15 13.7 13.2 14 10.2ZM14.9 18.4H18.5V19.8A1.8 1.8 0 0 1 14.9 19.8Z",
                "");
        add(
                "listen",
                "M8 1.5H16A1.6 1.6 0 0 1 16 4.7H13.3V20L12 22.8L10.7 20V4.7H8A1.6 1.6 0 0 1 8 1.5Z",
                "M6.6 17.5A6 6 0 0 1 6.6 10.5M3.2 20A10.6 10.6 0 0 1 3.2 8M17.4 17.5A6 6 0 0 0 17.4 10.5"
                        + "M20.8 20A10.6 10.6 0 0 0 20.8 8");
        add("probe", "M5 1.5H19V4.3H13.3V9.4H22V11.8H13.3V21L12 23.4L10.7 21V11.8H2V9.4H10.7V4.3H5Z", "");
        add(
                "dig",
                "M8 1.5H16V4.2H13.4V11H17.5V15.5C17.5 19 14.8 21.5 12 23C9.2 21.5 6.5 19 6.5 15.5V11" + "H10.6V4.2H8Z",
                "");
        add("cup", "M4 4H20L17.6 22H6.4ZM7 7L7.6 12H16.4L17 7Z", "");
        add("play", "M6 3.5L20 12L6 20.5Z", "");
        add("pause", "M5.5 4H10V20H5.5ZM14 4H18.5V20H14Z", "");
        add("next", "M3 4L13 12L3 20ZM14 4H17V20H14Z", "M20.5 4V20");
        add("undo", "", "M8 5L3.5 9.5L8 14M4 9.5H14.5A5.5 5.5 0 0 1 14.5 20.5H9");
        add("redo", "", "M16 5L20.5 9.5L16 14M20 9.5H9.5A5.5 5.5 0 0 0 9.5 20.5H15");
        add("back", "", "M14.5 4.5L7 12L14.5 19.5");
        add("fwd", "", "M9.5 4.5L17 12L9.5 19.5");
        add("down", "", "M5 9L12 16L19 9");
        add("help", "M12 17.6A1.5 1.5 0 1 1 11.99 17.6Z", "M8 8.5A4 4 0 1 1 13.5 12.2C12.4 12.8 12 13.5 12 15");
        add(
                "more",
                "M5 10.2A1.8 1.8 0 1 1 4.99 10.2ZM12 10.2A1.8 1.8 0 1 1 11.99 10.2ZM19 10.2A1.8 1.8 0 1"
                        + " 1 18.99 10.2Z",
                "");
        add("layers", "", "M12 3L21.5 8.5L12 14L2.5 8.5ZM3.5 13.5L12 18.5L20.5 13.5");
        add("alarm", "M12 2.5L23 21.5H1ZM10.9 9V15.5H13.1V9ZM10.9 17.2V19.4H13.1V17.2Z", "");
        add("caution", "M12 1L23 12L12 23L1 12ZM10.9 6.5V13.5H13.1V6.5ZM10.9 15.2V17.4H13.1V15.2Z", "");
        add("ok", "", "M4 12.5L9.5 18L20 6.5");
        add("cross", "", "M5 5L19 19M19 5L5 19");
        add("plus", "", "M12 4V20M4 12H20");
        add("minus", "", "M4 12H20");
        add(
                "ice",
                "M12 1.5L17 7.5L12 22.5L7 7.5ZM12 4.8L9.6 7.7L12 15.6L14.4 7.7Z",
                "M3.5 5.5L1.8 8L3.5 14L5.2 8ZM20.5 5.5L18.8 8L20.5 14L22.2 8Z");
        add(
                "leak",
                "M1 4H9V10H1ZM15 4H23V10H15ZM12 9C12 9 8.2 13.6 8.2 16.2A3.8 3.8 0 0 0 15.8 16.2C15.8"
                        + " 13.6 12 9 12 9ZM10 4H11V8H10ZM13 4H14V8H13Z",
                "");
        add("drop", "M12 1.5C12 1.5 5 10 5 14.8A7 7 0 0 0 19 14.8C19 10 12 1.5 12 1.5Z", "");
        add("purse", "M2 6H20V9H22V18H20V20H2ZM17 11.5V15.5H20V11.5Z", "");
        add(
                "sun",
                "M12 7A5 5 0 1 1 11.99 7Z",
                "M12 1.5V3.5M12 20.5V22.5M1.5 12H3.5M20.5 12H22.5M4.6 4.6L6 6M18 18L19.4 19.4M4.6 19.4L6"
                        + " 18M18 6L19.4 4.6");
        add("sky", "", "M2 19A10 10 0 0 1 22 19ZM12 19L7 10.4M12 19L17 10.4");
        add("spray", "M2 15H6V22H2Z", "M6.5 13L12 5M7.5 14L16 8.5M8 15.5L19.5 14");
        add(
                "hand",
                "M7 11V5.4A1.4 1.4 0 0 1 9.8 5.4V10H10.2V3.4A1.4 1.4 0 0 1 13 3.4V10H13.4V4.4A1.4 1.4 0"
                        + " 0 1 16.2 4.4V11H16.6V7.4A1.4 1.4 0 0 1 19.4 7.4V15A7.5 7.5 0 0 1 5 18L2.6 13.2A1.5 1.5"
                        + " 0 0 1 5.2 11.8L7 14.4Z",
                "");
        add("lock", "M4 10.5H20V22H4ZM11 14V18.5H13V14Z", "M7.5 10V7A4.5 4.5 0 0 1 16.5 7V10");
        add("seat", "M12 2A4.5 4.5 0 1 1 11.99 2ZM3 22C3 15 7.5 12.5 12 12.5C16.5 12.5 21 15 21 22Z", "");
        add("desk", "M2 3H22V14.5H2ZM4.4 5.4V12.1H19.6V5.4ZM4 17H8V21H4ZM10 17H14V21H10ZM16 17H20V21H16Z", "");
        add("board", "M3 20.8L4.4 15.6L16.4 3.6A2.2 2.2 0 0 1 20.4 7.6L8.4 19.6ZM12 20H22V22.5H12Z", "");
        add("flag", "M4 1.5H6.4V22.5H4ZM7.6 3H21L17 7.8L21 12.6H7.6Z", "");
        add(
                "crew",
                "M10.5 6.2C10.5 6.2 7.4 9.6 7.4 11.6A3.1 3.1 0 0 0 13.6 11.6C13.6 9.6 10.5 6.2 10.5 6.2Z",
                "M10.5 3A7.5 7.5 0 1 1 10.49 3ZM16 16L22 22");
        add(
                "deck",
                "M8 1.5H21.5V16.5H8ZM10.4 3.9V14.1H19.1V3.9ZM13.2 6.2H16.4V11.8H13.2Z",
                "M5 6V19.5H17.5M2 10.5V22.5H13");
        add("clock", "", "M12 2.5A9.5 9.5 0 1 1 11.99 2.5ZM12 6.5V12.5L16 15");
        add("screen", "", "M2.5 4H21.5V16.5H2.5ZM12 17V21M7 21.5H17");
        add("export", "", "M12 15V3M7 7.5L12 2.5L17 7.5M4 14V21H20V14");
        add(
                "gear",
                "M16 4.2A2.8 2.8 0 1 1 15.99 4.2ZM8 14.2A2.8 2.8 0 1 1 7.99 14.2Z",
                "M3 7H13M19 7H21M3 17H5M11 17H21");
        add("person", "M12 2A3 3 0 1 1 11.99 2ZM8.5 9H15.5V15.5H14V22.5H10V15.5H8.5Z", "");
        add(
                "flags",
                "M3 3H4.8V22H3ZM5.4 3.5H11.5L9.2 6.2L11.5 9H5.4ZM13 8H14.8V22H13ZM15.4 8.5H21.5L19.2 11.2L21.5 14H15.4Z",
                "");
        add("valve", "M2 5L12 12L2 19ZM22 5L12 12L22 19Z", "");
    }

    private static void add(String name, String fill, String line) {
        ALL.put(name, new Icon(name, fill, line));
    }

    /** The icon of a name. */
    public static Icon get(String name) {
        Icon icon = ALL.get(name);
        if (icon == null) {
            throw new IllegalArgumentException("no icon " + name);
        }
        return icon;
    }

    /** A sensor's icon. */
    public static Icon of(SensorKind kind) {
        return get(
                switch (kind) {
                    case RAIN -> "rain";
                    case WIND -> "wind";
                    case FREEZE -> "freeze";
                    case FLOW -> "flow";
                    case SOIL -> "soil";
                });
    }

    /** Every icon, in a fixed order. */
    public static java.util.Collection<Icon> all() {
        return java.util.Collections.unmodifiableCollection(ALL.values());
    }
}
