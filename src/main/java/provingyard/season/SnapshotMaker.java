package provingyard.season;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import provingyard.control.Controller;
import provingyard.numeric.Deterministic;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.sensor.Readings;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.world.ground.Frost;
import provingyard.world.ground.Ground;
import provingyard.world.ground.Sprinklers;
import provingyard.world.hydraulics.WaterFlows;
import provingyard.world.weather.Weather;

/** Makes the plain values that the screen draws from the world at one minute. */
record SnapshotMaker(Site site, Weather now, Ground ground, Frost twin, WaterFlows flows, LeakLog leakLog) {

    private static final double MM = 1000;
    private static final double MINUTES = 60;
    private static final double LEAST_FLOW = 1e-9;

    Snapshot make(
            long tick,
            LocalDateTime clock,
            SetUp setUp,
            Readings readings,
            Controller controller,
            boolean[] open,
            boolean masterOpen,
            Ledger ledger,
            double spent) {
        int n = site.yard().cells();
        float[] wetness = new float[n];
        float[] film = new float[n];
        float[] ice = new float[n];
        float[] stress = new float[n];
        float[] paving = new float[n];
        for (int c = 0; c < n; c++) {
            paving[c] = (float) ground.surfaceTemperature(c);
            if (site.yard().planted(c)) {
                wetness[c] = (float) ground.wetness(c);
                stress[c] = (float) (1 - ground.ks(c));
            } else if (site.yard().paved(c)) {
                film[c] = (float) ground.filmMm(c);
                ice[c] = (float) ground.irrigationIceMm(c, twin);
            }
        }
        return new Snapshot(
                tick,
                clock,
                sky(),
                site.yard().nx(),
                site.yard().ny(),
                wetness,
                film,
                ice,
                stress,
                site.climate().cold(now),
                paving,
                zones(controller, open),
                heads(),
                links(),
                sensors(setUp, readings),
                leaks(tick),
                masterOpen,
                flows.supply(),
                ledger,
                spent);
    }

    private Snapshot.Sky sky() {
        return new Snapshot.Sky(
                now.air(),
                now.dewPoint(),
                now.wind(),
                now.windFrom(),
                now.sun(),
                now.cloud(),
                now.rain() * MM * MINUTES,
                now.sunAltitude(),
                now.sunBearing());
    }

    private List<Snapshot.Zone> zones(Controller controller, boolean[] open) {
        List<Snapshot.Zone> zones = new ArrayList<>();
        List<String> ids = site.waterworks().zones();
        for (int z = 0; z < ids.size(); z++) {
            zones.add(new Snapshot.Zone(
                    ids.get(z), open[z], controller.lockedOut(z), flows.zones()[z], flows.zonePressures()[z]));
        }
        return zones;
    }

    private List<Snapshot.Head> heads() {
        List<Snapshot.Head> heads = new ArrayList<>();
        Sprinklers sprinklers = site.spraying().sprinklers();
        List<Plumbing.Head> plan = site.scenario().plumbing().heads();
        double toward = Math.toRadians(now.windFrom() + 180);
        for (int h = 0; h < plan.size(); h++) {
            double pressure = flows.headPressures()[h];
            boolean spraying = flows.heads()[h] > LEAST_FLOW;
            double drift = spraying ? sprinklers.edgeDrift(h, pressure, now.wind()) : 0;
            heads.add(new Snapshot.Head(
                    plan.get(h).id(),
                    spraying,
                    flows.heads()[h],
                    pressure,
                    spraying ? sprinklers.radius(h, pressure) : 0,
                    drift * Deterministic.sin(toward),
                    drift * Deterministic.cos(toward)));
        }
        return heads;
    }

    private double[] links() {
        List<Plumbing.Pipe> pipes = site.scenario().plumbing().pipes();
        double[] links = new double[pipes.size()];
        for (int i = 0; i < links.length; i++) {
            links[i] = flows.at(pipes.get(i).id(), 0);
        }
        return links;
    }

    private static List<Snapshot.Sensor> sensors(SetUp setUp, Readings readings) {
        List<Snapshot.Sensor> sensors = new ArrayList<>();
        for (Placement placement : setUp.sensors()) {
            readings.of(placement.id()).ifPresent(r -> sensors.add(new Snapshot.Sensor(r.id(), r.shown(), r.open())));
        }
        return sensors;
    }

    private List<Snapshot.Leak> leaks(long tick) {
        List<Snapshot.Leak> leaks = new ArrayList<>();
        for (int i = 0; i < flows.faults().length; i++) {
            if (flows.lost(i) > LEAST_FLOW && site.isLeak(i)) {
                Point at = site.waterworks().leakAt(i);
                leaks.add(new Snapshot.Leak(
                        at.x(),
                        at.y(),
                        flows.lost(i),
                        Math.max(0, tick - leakLog.began(i)),
                        flows.lost(i) >= LeakLog.SEEN_FROM));
            }
        }
        return leaks;
    }
}
