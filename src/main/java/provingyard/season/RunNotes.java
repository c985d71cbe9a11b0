package provingyard.season;

import java.util.ArrayList;
import java.util.List;
import provingyard.season.Chronicle.Run;
import provingyard.world.ground.MinuteForcing;
import provingyard.world.ground.Watering;
import provingyard.world.hydraulics.WaterFlows;
import provingyard.world.weather.Weather;

/** Notes each time a zone was open, and what its water met. Mutable. */
final class RunNotes {

    private static final double SECONDS = 60;

    private final Season season;
    private final double[][] landing;
    private final List<Run> runs = new ArrayList<>();
    private final Watering spare;
    private String open;
    private int zone;
    private long from;
    private double supplied;
    private double astray;
    private double astrayBefore;
    private double byWind;
    private double windSum;
    private int windy;
    private double wetness;

    RunNotes(Season season) {
        this.season = season;
        landing = new double[season.site().waterworks().zones().size()][];
        spare = season.site().spraying().dry();
    }

    /**
     * Takes the minute that the season has just lived.
     *
     * @param strong whether the wind was too strong for sprays
     */
    void minute(long t, Weather now, boolean strong) {
        String id = season.commands().openId();
        double total = season.tally().astray();
        double gone = total - astrayBefore;
        astrayBefore = total;
        if (open != null && !open.equals(id)) {
            end(t);
        }
        if (id == null) {
            return;
        }
        if (open == null) {
            begin(t, id);
        }
        supplied += season.flows().zones()[zone] * SECONDS;
        astray += gone;
        if (strong) {
            byWind += gone - inStillAir(now);
            windSum += now.wind();
            windy++;
        }
    }

    private void begin(long t, String id) {
        open = id;
        zone = season.commands().openZone();
        from = t;
        supplied = 0;
        astray = 0;
        byWind = 0;
        windSum = 0;
        windy = 0;
        wetness = wetness(zone);
    }

    private void end(long t) {
        double wind = windy == 0 ? Double.NaN : windSum / windy;
        // A pattern that lies on a walk in still air may be blown off it, which is no merit of the wind.
        runs.add(new Run(open, from, t, supplied, astray, Math.max(0, Math.min(astray, byWind)), wind, wetness));
        open = null;
    }

    private double inStillAir(Weather now) {
        WaterFlows flows = season.flows();
        if (!Spraying.runs(flows)) {
            return 0;
        }
        MinuteForcing w = Course.forcing(now);
        MinuteForcing still = new MinuteForcing(
                w.rain(), w.reference(), w.air(), w.dewPoint(), 0, w.sun(), w.cloud(), w.sunAltitude(), w.sunBearing());
        Spraying.Landing landed = season.site().spraying().land(flows, still, now.windFrom(), spare);
        return landed.lost() + landed.beyond() + landed.paved();
    }

    /** Water in the root zone of a zone by its index, as {@link Run#wetness}. */
    double wetness(int z) {
        if (landing[z] == null) {
            landing[z] = season.site().spraying().alone(season.site(), z);
        }
        double sum = 0;
        double weight = 0;
        for (int c = 0; c < landing[z].length; c++) {
            if (landing[z][c] > 0 && season.site().cells().planted(c)) {
                sum += landing[z][c] * season.ground().wetness(c);
                weight += landing[z][c];
            }
        }
        return weight == 0 ? Double.NaN : sum / weight;
    }

    /** The runs up to a tick, which ends the one that is open. */
    List<Run> runs(long tick) {
        if (open != null) {
            end(tick);
        }
        return runs;
    }
}
