package provingyard.report;

import java.util.List;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.quantity.UnitSystem;
import provingyard.text.Texts;

/** The tests of a service call as comma-separated values: a row a test, units in the columns' names. */
public final class CallCsv {

    private static final double THOUSAND = 1e3;

    /**
     * A test.
     *
     * @param number from 1
     * @param minute minutes on the site at its end
     * @param id its stable name
     * @param name what it is called
     * @param reading what it read, with its unit; empty for nothing
     * @param minutes that it took
     * @param expected bits that it could be expected to tell
     * @param best bits of the best there was in its minutes
     * @param cameOut bits by which uncertainty fell
     * @param litres L that ran away since the arrival
     */
    public record Line(
            int number,
            double minute,
            String id,
            String name,
            String reading,
            double minutes,
            double expected,
            double best,
            double cameOut,
            double litres) {}

    private CallCsv() {}

    /** The file's bytes. */
    public static byte[] of(List<Line> lines, String language, UnitSystem units) {
        Texts texts = Texts.of("report", language);
        Display display = Display.of(units, texts.language());
        Csv csv = new Csv();
        for (String column :
                List.of("number", "minute", "id", "name", "reading", "minutes", "expected", "best", "cameOut")) {
            csv.text(texts.say("callCsv." + column));
        }
        csv.text(texts.say("callCsv.water") + " (" + display.unit(Show.VOLUME) + ")")
                .end();
        for (Line line : lines) {
            csv.number(line.number()).number(line.minute()).text(line.id()).text(line.name());
            csv.text(line.reading()).number(line.minutes()).number(line.expected());
            csv.number(line.best()).number(line.cameOut());
            csv.number(display.shown(Show.VOLUME, line.litres() / THOUSAND)).end();
        }
        return csv.bytes();
    }
}
