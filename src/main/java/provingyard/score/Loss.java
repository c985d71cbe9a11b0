package provingyard.score;

import java.util.ArrayList;
import java.util.List;
import provingyard.scenario.Costs;
import provingyard.season.Ledger;
import provingyard.season.Outcome;
import provingyard.season.Season;

/**
 * What a season cost in money, as a sum of named entries; no litre is counted twice (see {@link Ledger.Irrigation}).
 *
 * @param entries one per kind of loss, in the order of {@link Kind}, also where it is nothing
 */
public record Loss(List<Entry> entries) {

    /** Kinds of loss. */
    public enum Kind {
        DRIFT,
        OVERSPRAY,
        RUNOFF,
        BELOW_ROOTS,
        LEAK,
        REFILL,
        ICED_WALK,
        MISSED_LEAK,
        LATE_LEAK,
        FALSE_ALARM,
        DRY_PLANTS,
        DEAD_PLANTS,
        SENSORS
    }

    /**
     * One named entry: {@code money = amount * price}.
     *
     * @param amount m3 (water), m2 h (ice), count (leaks, alarms), m2 d or m2 (plants), USD (sensors)
     * @param price USD per unit of amount
     */
    public record Entry(Kind kind, double amount, double price) {

        /** USD lost. */
        public double money() {
            return amount * price;
        }
    }

    public Loss {
        entries = List.copyOf(entries);
    }

    /** The loss of a season as far as it was lived, under its own lesson's weights. */
    public static Loss of(Season season) {
        return of(season.outcome(), season.site().scenario().costs());
    }

    /** The loss of what a season came to, under a lesson's weights. */
    public static Loss of(Outcome outcome, Costs costs) {
        Ledger.Irrigation water = outcome.ledger().irrigation();
        Ledger.Plants plants = outcome.ledger().plants();
        List<Entry> entries = new ArrayList<>();
        entries.add(wasted(Kind.DRIFT, water.drift(), costs));
        entries.add(wasted(Kind.OVERSPRAY, water.overspray(), costs));
        entries.add(wasted(Kind.RUNOFF, water.runoff(), costs));
        entries.add(wasted(Kind.BELOW_ROOTS, water.below(), costs));
        entries.add(wasted(Kind.LEAK, water.leaked(), costs));
        entries.add(wasted(Kind.REFILL, plants.refill(), costs));
        entries.add(new Entry(Kind.ICED_WALK, outcome.ledger().ice().areaHoursInTraffic(), costs.icedWalk()));
        entries.add(new Entry(Kind.MISSED_LEAK, outcome.leaks().missed(), costs.missedLeak()));
        entries.add(new Entry(Kind.LATE_LEAK, outcome.leaks().late(), costs.lateLeak()));
        entries.add(new Entry(Kind.FALSE_ALARM, outcome.leaks().falseAlarms(), costs.falseAlarm()));
        entries.add(new Entry(Kind.DRY_PLANTS, plants.dryAreaDays(), costs.dryPlant()));
        entries.add(new Entry(Kind.DEAD_PLANTS, plants.deadArea(), costs.deadPlant()));
        entries.add(new Entry(Kind.SENSORS, outcome.spent(), outcome.shareOfLife()));
        return new Loss(entries);
    }

    private static Entry wasted(Kind kind, double volume, Costs costs) {
        return new Entry(kind, Math.max(0, volume), costs.water());
    }

    /** USD lost in all. */
    public double total() {
        double sum = 0;
        for (Entry entry : entries) {
            sum += entry.money();
        }
        return sum;
    }

    /** USD lost by one kind. */
    public double money(Kind kind) {
        return entry(kind).money();
    }

    /** The entry of a kind. */
    public Entry entry(Kind kind) {
        return entries.get(kind.ordinal());
    }

    /** Entry by entry what this season lost more than another (negative: less). */
    public List<Entry> minus(Loss other) {
        List<Entry> difference = new ArrayList<>();
        for (Entry entry : entries) {
            Entry theirs = other.entry(entry.kind());
            difference.add(new Entry(entry.kind(), entry.money() - theirs.money(), 1));
        }
        return difference;
    }
}
