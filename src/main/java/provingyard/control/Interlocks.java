package provingyard.control;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.SensorKind;
import provingyard.sensor.Readings;
import provingyard.setup.Interlock;
import provingyard.setup.Interlock.Action;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * What sensors hold back. Soil actions of other sensors, which have no dry side, drop starts while tripped. Stateless.
 */
final class Interlocks {

    /** An interlock with its sensor's index among the placements and its zones by index. */
    record Link(int sensor, String id, Action action, boolean soil, boolean[] zones) {

        boolean open(Readings last) {
            Readings.Reading reading = last.at(sensor, id);
            return reading != null && reading.open();
        }

        boolean dry(Readings last) {
            Readings.Reading reading = last.at(sensor, id);
            return reading != null && reading.seenDry();
        }

        boolean starts() {
            return soil && action == Action.START;
        }
    }

    private final List<Link> links = new ArrayList<>();
    private final List<Link> starters;

    Interlocks(SetUp setUp, List<String> zones) {
        for (Interlock interlock : setUp.interlocks()) {
            int index = indexOf(setUp.sensors(), interlock.sensor());
            if (index >= 0 && interlock.action() != Action.NONE) {
                boolean[] acts = new boolean[zones.size()];
                for (int z = 0; z < acts.length; z++) {
                    acts[z] = interlock.actsOn(zones.get(z));
                }
                boolean soil = setUp.sensors().get(index).kind() == SensorKind.SOIL;
                links.add(new Link(index, interlock.sensor(), interlock.action(), soil, acts));
            }
        }
        starters = links.stream().filter(Link::starts).toList();
    }

    private static int indexOf(List<Placement> sensors, String id) {
        for (int i = 0; i < sensors.size(); i++) {
            if (sensors.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    /** Soil sensors that start runs. */
    List<Link> starters() {
        return starters;
    }

    /** Id of the sensor that drops a clock start of a zone now, or null. */
    String dropsClockStart(int zone, Readings last) {
        for (Link link : links) {
            if (link.starts() && link.zones()[zone]) {
                return link.id();
            }
        }
        return dropsAnyStart(zone, last);
    }

    /** Id of the sensor that drops a start of a zone now, be it by clock or by dry soil; or null. */
    String dropsAnyStart(int zone, Readings last) {
        for (Link link : links) {
            if (link.zones()[zone] && drops(link, last)) {
                return link.id();
            }
        }
        return null;
    }

    private static boolean drops(Link link, Readings last) {
        return switch (link.action()) {
            case SKIP, SHUT, BLOCK -> link.open(last);
            case ALLOW -> link.soil() ? !link.dry(last) : link.open(last);
            case START -> !link.soil() && link.open(last);
            case PAUSE, NONE -> false;
        };
    }

    /** Id of the sensor that ends a zone's run now, or null. */
    String shuts(int zone, Readings last) {
        return tripped(Action.SHUT, zone, last);
    }

    /** Id of the sensor that holds a zone's run now, or null. */
    String pauses(int zone, Readings last) {
        return tripped(Action.PAUSE, zone, last);
    }

    private String tripped(Action action, int zone, Readings last) {
        for (Link link : links) {
            if (link.action() == action && link.zones()[zone] && link.open(last)) {
                return link.id();
            }
        }
        return null;
    }
}
