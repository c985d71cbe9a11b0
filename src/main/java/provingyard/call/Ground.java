package provingyard.call;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Plumbing;
import provingyard.scenario.Point;
import provingyard.scenario.Scenario;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.world.electric.Wiring;
import provingyard.world.hydraulics.Waterworks;

/**
 * What all families of tests stand on: the site with all its possible faults, its pipes, wires and places.
 */
final class Ground {

    private final Scenario scenario;
    private final SetUp installed;
    private final Suspects suspects;
    private final Waterworks pipes;
    private final Wires wires;
    private final Map<String, Point> places = new LinkedHashMap<>();

    /** The ground of a site whose scenario lists all possible faults. */
    Ground(Scenario scenario, SetUp installed, Suspects suspects, Wiring wiring) {
        this.scenario = scenario;
        this.installed = installed;
        this.suspects = suspects;
        pipes = Waterworks.of(scenario);
        wires = new Wires(scenario, wiring);
        places.put(CallSite.CONTROLLER, Wiring.controllerOf(scenario));
        for (Plumbing.Fitting fitting : scenario.plumbing().fittings()) {
            places.put(fitting.id(), pipes.path(fitting.on()).pointAt(fitting.along()));
        }
        scenario.plumbing().heads().forEach(h -> places.put(h.id(), h.at()));
        wiring.boxes().forEach(b -> places.put(b.id(), b.at()));
        installed.sensors().forEach(this::sensor);
        for (String pipe : pipes.mainline()) {
            for (double along : suspects.cells(pipe)) {
                places.put(suspects.cellClass(pipe, along), pipes.path(pipe).pointAt(along));
            }
        }
    }

    private void sensor(Placement placement) {
        places.put(placement.id(), place(placement));
    }

    private Point place(Placement placement) {
        if (placement instanceof Placement.Flow flow) {
            return pipes.path(flow.on()).pointAt(flow.along());
        }
        if (placement instanceof Placement.Rain rain) {
            return rain.at();
        }
        if (placement instanceof Placement.Wind wind) {
            return wind.at();
        }
        return placement instanceof Placement.Freeze freeze ? freeze.at() : ((Placement.Soil) placement).at();
    }

    /** All families of tests. */
    List<TestKit> kits() {
        return List.of();
    }

    /** The site; its faults are all that may be wrong. */
    Scenario scenario() {
        return scenario;
    }

    /** The set-up that is on the site. */
    SetUp installed() {
        return installed;
    }

    Suspects suspects() {
        return suspects;
    }

    /** A fault by its number. */
    FaultPlan fault(int index) {
        return scenario.faults().get(index);
    }

    Waterworks pipes() {
        return pipes;
    }

    Wires wires() {
        return wires;
    }

    /** Places by id: the controller, fittings, heads, boxes, sensors, cells of mainlines by their repair class. */
    Map<String, Point> places() {
        return places;
    }
}
