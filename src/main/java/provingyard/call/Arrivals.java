package provingyard.call;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.Schedule;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.FlowWatch;
import provingyard.setup.SetUp;

/**
 * The living yard as the technician finds it: the site's own season with the faults of a case, lived until the arrival
 * under the set-up that is on the site. Then the technician switches the program off and re-arms the flow watch (common
 * practice, no source): from there on nothing runs but by hand. Safe for several threads.
 */
final class Arrivals {

    private final Site sound;
    private final SetUp installed;
    private final SetUp off;
    private final LastDays days;
    private final Ground ground;
    private Case last;
    private Season found;

    Arrivals(Ground ground) {
        this.ground = ground;
        days = ground.days();
        sound = days.yard();
        installed = ground.installed();
        Schedule own = installed.schedule() != null
                ? installed.schedule()
                : ground.scenario().schedule();
        Schedule none = new Schedule(List.of(), List.of(), own.every(), List.of(), own.seasonal(), own.allowed());
        off = new SetUp(installed.sensors(), List.of(), FlowWatch.OFF, none);
    }

    /** The season of a case at the arrival, to be lived on from there; the faults have the places that they have in it. */
    synchronized Season in(Case wrong) {
        if (!wrong.equals(last)) {
            found = lived(wrong);
            last = wrong;
        }
        return found.copy();
    }

    private Season lived(Case wrong) {
        List<FaultPlan> plans = wrong.faults().stream().map(ground::fault).toList();
        List<Season.Dealt> dealt = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            dealt.add(new Season.Dealt(i, began(plans.get(i))));
        }
        Season season = Season.begin(sound.with(plans), installed, dealt);
        while (season.tick() < days.exposure().until()) {
            season.advance();
        }
        season.change(off);
        season.rearm();
        return season;
    }

    /** When the author says, where that lies before the arrival; else so long ago as records are looked at. */
    private long began(FaultPlan plan) {
        long from = days.exposure().from();
        long tick = plan.when() == null ? from : LastDays.tick(plan.when());
        return tick < days.exposure().until() ? tick : from;
    }
}
