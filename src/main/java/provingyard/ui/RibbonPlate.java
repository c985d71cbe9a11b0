package provingyard.ui;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import provingyard.picture.RibbonData;
import provingyard.quantity.Show;

/**
 * What the plate over the ribbon says about a minute: its time, and every value that was lived then.
 *
 * @param title day and time
 * @param rows names with values, in the order of the lanes
 */
record RibbonPlate(String title, List<Row> rows) {

    private static final double MM = 1000;

    /** A name with its value. */
    record Row(String name, String value) {}

    /** The plate of a tick. */
    static RibbonPlate at(RibbonData data, long tick, Words words) {
        Locale locale = words.language().equals("es") ? Locale.forLanguageTag("es") : Locale.ENGLISH;
        LocalDateTime clock = data.start().plusMinutes(tick);
        String title = clock.format(DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", locale));
        List<Row> rows = new ArrayList<>();
        if (tick >= data.livedUntil()) {
            rows.add(new Row(words.say("plate.notLived"), ""));
            zones(rows, data, tick, words);
            return new RibbonPlate(title, List.copyOf(rows));
        }
        weather(rows, data, tick, words);
        zones(rows, data, tick, words);
        readings(rows, data, tick, words);
        return new RibbonPlate(title, List.copyOf(rows));
    }

    private static void weather(List<Row> rows, RibbonData data, long tick, Words words) {
        add(rows, words, "plate.rain", Show.DEPTH, value(data.rain(), data.step(), tick) / MM);
        add(rows, words, "plate.air", Show.TEMPERATURE, value(data.air(), data.step(), tick));
        double sun = value(data.sun(), data.step(), tick);
        if (Double.isFinite(sun)) {
            rows.add(new Row(words.say("plate.sun"), Math.round(sun) + "\u00a0W/m²"));
        }
        add(rows, words, "plate.wind", Show.SPEED, value(data.wind(), data.step(), tick));
    }

    private static void zones(List<Row> rows, RibbonData data, long tick, Words words) {
        for (RibbonData.Lane lane : data.lanes()) {
            for (RibbonData.Run run : lane.runs()) {
                if (tick >= run.from() && tick < run.to()) {
                    rows.add(new Row(
                            lane.zone(), words.say("plate." + run.state().name())));
                }
            }
        }
    }

    private static void readings(List<Row> rows, RibbonData data, long tick, Words words) {
        if (data.flow() != null) {
            add(
                    rows,
                    words,
                    "plate.flow",
                    Show.FLOW,
                    value(data.flow().reading(), data.flow().step(), tick));
            for (RibbonData.Band band : data.flow().bands()) {
                if (tick >= band.from() && tick < band.to()) {
                    String low = words.display().text(Show.FLOW, band.low());
                    rows.add(new Row(
                            words.say("plate.limits"),
                            low + " – " + words.display().text(Show.FLOW, band.high())));
                }
            }
        }
        if (data.soil() != null) {
            add(
                    rows,
                    words,
                    "plate.soil",
                    Show.FRACTION,
                    value(data.soil().reading(), data.soil().step(), tick));
        }
        for (RibbonData.Hold hold : data.holds()) {
            if (tick >= hold.from() && tick < hold.to()) {
                rows.add(new Row(words.say("sensor." + hold.kind().name()), words.say("plate.holds")));
            }
        }
    }

    private static void add(List<Row> rows, Words words, String key, Show show, double value) {
        if (Double.isFinite(value)) {
            rows.add(new Row(words.say(key), words.display().text(show, value)));
        }
    }

    /** The value of the step that a tick lies in; of the hour in the making the last one known. */
    private static double value(double[] values, int step, long tick) {
        int at = (int) Math.min(values.length - 1L, tick / step);
        return at < 0 ? Double.NaN : values[at];
    }
}
