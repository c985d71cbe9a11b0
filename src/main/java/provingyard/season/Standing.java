package provingyard.season;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import provingyard.control.Commands;
import provingyard.scenario.FaultPlan;
import provingyard.world.electric.ValveWires;
import provingyard.world.hydraulics.Hands;
import provingyard.world.hydraulics.WaterFlows;
import provingyard.world.hydraulics.Waterworks;

/**
 * Which valves stand open in a minute: what the controller wants, as far as the wires carry it, and what people hold.
 *
 * @param open zone and master valves that stand open of their own, by id
 * @param hands valves that people hold
 */
record Standing(Set<String> open, Hands hands) {

    /**
     * How valves stand under the controller's commands.
     *
     * @param active bit i is set while the scenario's i-th fault acts
     */
    static Standing of(Site site, Commands commands, Hands hands, long active) {
        List<Integer> electric = electric(site, active);
        List<String> running = commands.openZone() < 0 ? List.of() : List.of(commands.openId());
        if (!electric.isEmpty()) {
            ValveWires wires = site.valveWires();
            return new Standing(wires.open(wires.panel(running, commands.masterOpen()), electric), hands);
        }
        Set<String> open = new LinkedHashSet<>(running);
        if (commands.masterOpen()) {
            open.addAll(site.waterworks().masters());
        }
        return new Standing(open, hands);
    }

    private static List<Integer> electric(Site site, long active) {
        if (active == 0) {
            return List.of();
        }
        List<FaultPlan> faults = site.scenario().faults();
        return site.waterworks().acting(active).stream()
                .filter(i -> ValveWires.isElectric(faults.get(i).kind()))
                .toList();
    }

    /** What flows while some of the scenario's faults act. */
    WaterFlows flows(Site site, long active) {
        Waterworks pipes = site.waterworks();
        return pipes.flows(open, hands, pipes.acting(active));
    }

    /** Whether a zone or master valve stands open, of its own or by hand; one that is stuck may do otherwise. */
    private boolean isOpen(String valve) {
        return (open.contains(valve) || hands.opened().contains(valve))
                && !hands.shut().contains(valve);
    }

    /** Which zones stand open, in the document's order. */
    boolean[] zones(Site site) {
        List<String> ids = site.waterworks().zones();
        boolean[] zones = new boolean[ids.size()];
        for (int z = 0; z < zones.length; z++) {
            zones[z] = isOpen(ids.get(z));
        }
        return zones;
    }

    /** Whether all master valves stand open; true where there is none. */
    boolean masterOpen(Site site) {
        return site.waterworks().masters().stream().allMatch(this::isOpen);
    }

    /** Whether more zones stand open than the controller wants, so that more flows though nothing is lost. */
    boolean isMoreThan(Commands commands, Site site) {
        List<String> more = new ArrayList<>(site.waterworks().zones());
        more.removeIf(zone -> !isOpen(zone) || zone.equals(commands.openId()));
        return !more.isEmpty();
    }
}
