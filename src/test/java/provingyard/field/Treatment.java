package provingyard.field;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Catalogue;
import provingyard.scenario.Schedule;
import provingyard.season.Season;
import provingyard.setup.Interlock;
import provingyard.setup.Mount;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/**
 * What is done to a plot: the set-ups of a season with the ticks from which they hold, the first from tick 0.
 *
 * @param name how the table names it
 */
record Treatment(String name, List<Season.Change> changes) {

    private static final LocalTime START = LocalTime.of(5, 0);
    private static final List<DayOfWeek> ONCE = List.of(DayOfWeek.WEDNESDAY);
    private static final List<DayOfWeek> TWICE = List.of(DayOfWeek.TUESDAY, DayOfWeek.FRIDAY);
    private static final List<DayOfWeek> THRICE = List.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY);

    /** The clock alone, with about so many minutes a week on 1, 2, 3 or 7 days, in whole minutes a start. */
    static Treatment clock(int daysAWeek, int minutesAWeek) {
        SetUp setUp = SetUp.CLOCK_ALONE.withSchedule(schedule(daysAWeek, minutesAWeek));
        return new Treatment("clock", List.of(new Season.Change(0, setUp)));
    }

    /** Clock alone whose minutes a week change: pairs of the first day (0 is the season's first) and the minutes. */
    static Treatment card(int daysAWeek, int[][] fromDayMinutes) {
        List<Season.Change> changes = new ArrayList<>();
        for (int[] entry : fromDayMinutes) {
            SetUp setUp = SetUp.CLOCK_ALONE.withSchedule(schedule(daysAWeek, entry[1]));
            changes.add(new Season.Change(entry[0] * 1440L, setUp));
        }
        return new Treatment("card", List.copyOf(changes));
    }

    private static Schedule schedule(int daysAWeek, int minutesAWeek) {
        List<DayOfWeek> days =
                switch (daysAWeek) {
                    case 1 -> ONCE;
                    case 2 -> TWICE;
                    case 3 -> THRICE;
                    case 7 -> List.of(DayOfWeek.values());
                    default -> throw new IllegalArgumentException("days a week: " + daysAWeek);
                };
        Schedule.ZoneRun run = new Schedule.ZoneRun(FieldPlot.ZONE, seconds(daysAWeek, minutesAWeek), 0, 0);
        return new Schedule(List.of(run), days, 0, List.of(START), 1, new Schedule.Allowed(List.of(), List.of()));
    }

    private static double seconds(int daysAWeek, int minutesAWeek) {
        return 60.0 * Math.max(1, Math.round((double) minutesAWeek / daysAWeek));
    }

    /** The same under another name. */
    Treatment named(String other) {
        return new Treatment(other, changes);
    }

    /** With a rain sensor of a set point (m) and a vent opening (0 to 1) that drops starts while it is tripped. */
    Treatment rainSensor(double trip, double vent) {
        return rainSensor(new Placement.Rain("rain-1", FieldPlot.BESIDE, Mount.POST, 2, trip, vent));
    }

    /** With a rain sensor that drops starts while it is tripped. */
    Treatment rainSensor(Placement.Rain sensor) {
        return with(sensor, Interlock.Action.SKIP);
    }

    /** With a soil moisture sensor that drops starts while the roots hold a share of their available water or more. */
    Treatment soilBlocks(Catalogue catalogue, double share) {
        return soilBlocks(catalogue, FieldPlot.SOIL, share);
    }

    /** The same in another soil. */
    Treatment soilBlocks(Catalogue catalogue, String soil, double share) {
        return with(soilSensor(catalogue, soil, share, share), Interlock.Action.BLOCK);
    }

    /** With a soil moisture sensor that lets starts through only from a dry share on, until a wet share is reached. */
    Treatment soilAllows(Catalogue catalogue, double dryShare, double wetShare) {
        return with(soilSensor(catalogue, FieldPlot.SOIL, dryShare, wetShare), Interlock.Action.ALLOW);
    }

    private static Placement soilSensor(Catalogue catalogue, String id, double dryShare, double wetShare) {
        Catalogue.Soil soil = catalogue.soils().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseThrow();
        double available = soil.fieldCapacity() - soil.wiltingPoint();
        return new Placement.Soil(
                "soil-1",
                FieldPlot.MIDDLE,
                0.1,
                id,
                soil.wiltingPoint() + dryShare * available,
                soil.wiltingPoint() + wetShare * available);
    }

    private Treatment with(Placement sensor, Interlock.Action action) {
        List<Season.Change> next = new ArrayList<>();
        for (Season.Change change : changes) {
            SetUp setUp = change.setUp().with(sensor).with(new Interlock(sensor.id(), action, List.of()));
            next.add(new Season.Change(change.tick(), setUp));
        }
        return new Treatment(name, List.copyOf(next));
    }
}
