package provingyard.season;

import java.util.ArrayList;
import java.util.List;
import provingyard.control.Commands;
import provingyard.control.Controller;
import provingyard.scenario.Scenario;
import provingyard.scenario.Schedule;
import provingyard.sensor.Readings;
import provingyard.setup.FlowWatch;
import provingyard.setup.SetUp;

/** What a schedule would run if no sensor held anything: the controller itself, asked minute by minute. */
public final class Plan {

    /** A zone's run from a tick to a tick. */
    public record Run(String zone, long from, long to) {}

    private Plan() {}

    /**
     * The runs of a whole season, in order.
     *
     * @param schedule the trainee's, or null for the site's own
     * @param ticks minutes of the season
     */
    public static List<Run> of(Scenario scenario, Schedule schedule, long ticks) {
        Controller controller = Controller.of(scenario, new SetUp(List.of(), List.of(), FlowWatch.OFF, schedule));
        List<Run> runs = new ArrayList<>();
        String open = null;
        long since = 0;
        for (long tick = 0; tick < ticks; tick++) {
            Commands commands = controller.decide(tick, Readings.NONE);
            String next = commands.openId();
            if (open != null && !open.equals(next)) {
                runs.add(new Run(open, since, tick));
            }
            since = next != null && !next.equals(open) ? tick : since;
            open = next;
        }
        if (open != null) {
            runs.add(new Run(open, since, ticks));
        }
        return List.copyOf(runs);
    }
}
