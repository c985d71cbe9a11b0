package provingyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import provingyard.picture.NightPlot;
import provingyard.quantity.Display;
import provingyard.quantity.Show;
import provingyard.scenario.SensorKind;
import provingyard.season.Chronicle;
import provingyard.season.Season;
import provingyard.setup.Placement;
import provingyard.text.Texts;

/** The plot of a night in which a walk froze: the same in the window and on pages. */
public final class IcedNight {

    private static final double FREEZING = 0;
    private static final int STEP = Chronicle.TEMPERATURE_STEP;

    private final Chronicle.IcedWalk night;
    private final Texts window;
    private final Display display;
    private final int steps;
    private final List<NightPlot.Line> lines = new ArrayList<>();
    private double limit = Double.NaN;

    private IcedNight(Chronicle.IcedWalk night, Texts window, Display display) {
        this.night = night;
        this.window = window;
        this.display = display;
        steps = night.air().length;
    }

    /**
     * The plot.
     *
     * @param season the season that the night belongs to
     * @param chronicle what is known of it
     * @param window the window's texts
     */
    public static NightPlot of(
            Season season, Chronicle chronicle, Chronicle.IcedWalk night, Texts window, Display display) {
        IcedNight iced = new IcedNight(night, window, display);
        iced.lines(season, chronicle);
        return new NightPlot(iced.lines, iced.limit, iced.span(), iced.runs(chronicle), iced.words(season));
    }

    private void lines(Season season, Chronicle chronicle) {
        lines.add(new NightPlot.Line(window.say("ice.air"), night.air(), NightPlot.Kind.AIR));
        lines.add(new NightPlot.Line(window.say("ice.paving"), night.paving(), NightPlot.Kind.PAVING));
        for (Placement placement : season.setUp().of(SensorKind.FREEZE)) {
            Chronicle.Sensed sensed = chronicle.sensor(placement.id());
            if (sensed != null && Double.isNaN(limit)) {
                limit = ((Placement.Freeze) placement).below();
                lines.add(new NightPlot.Line(window.say("sensor.FREEZE"), shown(sensed), NightPlot.Kind.SENSOR));
            }
        }
    }

    private float[] shown(Chronicle.Sensed sensed) {
        float[] values = new float[steps];
        for (int i = 0; i < steps; i++) {
            values[i] = (float) sensed.seenAt(night.start() + (long) i * STEP);
        }
        return values;
    }

    private double[] span() {
        return new double[] {Math.max(0, at(night.from())), Math.min(steps - 1, at(night.until()))};
    }

    private List<double[]> runs(Chronicle chronicle) {
        List<double[]> runs = new ArrayList<>();
        for (Chronicle.Run run : chronicle.runs()) {
            if (at(run.until()) > 0 && at(run.from()) < steps - 1) {
                runs.add(new double[] {at(run.from()), at(run.until())});
            }
        }
        return runs;
    }

    /** A tick in steps of the lines. */
    private double at(long tick) {
        return (tick - night.start()) / (double) STEP;
    }

    private NightPlot.Words words(Season season) {
        return new NightPlot.Words(
                display.text(Show.TEMPERATURE, FREEZING),
                Double.isNaN(limit) ? "" : display.text(Show.TEMPERATURE, limit),
                window.say("ice.iced"),
                window.say("ice.runs"),
                time(season, night.start()),
                time(season, night.start() + (long) (steps - 1) * STEP));
    }

    private static String time(Season season, long tick) {
        return String.format(Locale.ROOT, "%1$tH:%1$tM", season.clock(tick));
    }
}
