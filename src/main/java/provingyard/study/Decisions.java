package provingyard.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import provingyard.scenario.Schedule;
import provingyard.scenario.SensorKind;
import provingyard.season.Season;
import provingyard.setup.SetUp;

/**
 * All that was decided in a season, and when; choice by choice it can be exchanged for what another set-up has.
 *
 * @param changes set-ups and the ticks from which they held, in order; the first holds from the start
 * @param rearms minutes at which the controller was re-armed by hand; they belong to the flow watch
 */
record Decisions(List<Season.Change> changes, List<Long> rearms) {

    Decisions {
        changes = List.copyOf(changes);
        rearms = List.copyOf(rearms);
    }

    /** What was decided in a season. */
    static Decisions of(Season lived) {
        return new Decisions(lived.changes(), lived.rearms());
    }

    /** The same history of the choices that are kept; of the rest, what a set-up has, from the first minute. */
    Decisions keeping(Set<Choice> kept, SetUp rest) {
        Set<SensorKind> theirs = EnumSet.noneOf(SensorKind.class);
        for (SensorKind kind : SensorKind.values()) {
            if (!kept.contains(Choice.of(kind))) {
                theirs.add(kind);
            }
        }
        // Over the whole history, so that nobody changes its name, and is bought anew, half way.
        SetUp apart = Mix.apart(rest, theirs, ids(kept));
        List<Season.Change> mixed = changes.stream()
                .map(c -> new Season.Change(c.tick(), Mix.of(c.setUp(), kept, apart)))
                .toList();
        return new Decisions(mixed, kept.contains(Choice.FLOW) ? rearms : List.of());
    }

    /** Ids that the choices ever had. */
    private List<String> ids(Set<Choice> choices) {
        Set<String> ids = new TreeSet<>();
        for (Season.Change change : changes) {
            change.setUp().sensors().stream()
                    .filter(s -> choices.contains(Choice.of(s.kind())))
                    .forEach(s -> ids.add(s.id()));
        }
        return new ArrayList<>(ids);
    }

    /** Whether a choice was all the time as a set-up has it. */
    boolean same(Choice choice, SetUp other, Schedule sites) {
        return !(choice == Choice.FLOW && rearmedAFlowWatch())
                && changes.stream().allMatch(c -> same(choice, c.setUp(), other, sites));
    }

    /** Without a flow sensor there was nothing to re-arm. */
    private boolean rearmedAFlowWatch() {
        return !rearms.isEmpty()
                && changes.stream().anyMatch(c -> !c.setUp().of(SensorKind.FLOW).isEmpty());
    }

    private static boolean same(Choice choice, SetUp one, SetUp other, Schedule sites) {
        if (choice.kind().isEmpty()) {
            return schedule(one, sites).equals(schedule(other, sites));
        }
        SensorKind kind = choice.kind().get();
        return one.of(kind).equals(other.of(kind))
                && Mix.interlocks(one, kind).equals(Mix.interlocks(other, kind))
                && (kind != SensorKind.FLOW || one.flowWatch().equals(other.flowWatch()));
    }

    private static Schedule schedule(SetUp setUp, Schedule sites) {
        return setUp.schedule() == null ? sites : setUp.schedule();
    }

    /** Lives them under the weather, events and faults of a season, as long as that one was lived. */
    Season live(Season under) {
        Season season = under.beside(changes.get(0).setUp());
        Set<Long> byHand = new TreeSet<>(rearms);
        int next = 1;
        while (season.tick() < under.tick()) {
            while (next < changes.size() && changes.get(next).tick() <= season.tick()) {
                season.change(changes.get(next++).setUp());
            }
            if (byHand.contains(season.tick())) {
                season.rearm();
            }
            season.advance();
        }
        return season;
    }
}
