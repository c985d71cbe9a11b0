package provingyard.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import provingyard.scenario.SensorKind;
import provingyard.season.Season;
import provingyard.study.Moment.What;
import provingyard.study.Moment.Why;

/**
 * Finds the moments of a lived season that mattered, each with its cause by evidence.
 *
 * <p>Losses of one kind are told once: what the moments of a rule cost together is never more than the entries of the loss
 * that they speak of. How water that ran off or sank is given to waterings, and the limits of that, stands with
 * {@code WaterDivided}; how causes are found with {@code Blame} and {@code DryRule}. Causes are those of one sensor in an
 * otherwise equal season: what it would have changed for the others is not followed.
 */
public final class Moments {

    /**
     * A What with its Why and the kind of sensor that it speaks of.
     *
     * @param sensor null where the schedule alone could have helped
     */
    public record Form(What what, Why why, SensorKind sensor) {}

    private static final List<Form> FORMS = forms();

    private Moments() {}

    private static List<Form> forms() {
        List<Why> causes = List.of(Why.NO_SENSOR, Why.NOT_CONNECTED, Why.PLACE, Why.SETTING, Why.FAULT);
        List<Form> forms = new ArrayList<>();
        for (Why why : causes) {
            forms.add(new Form(What.WATERED_WET_SOIL, why, SensorKind.RAIN));
            forms.add(new Form(What.WATERED_WET_SOIL, why, SensorKind.SOIL));
            forms.add(new Form(What.DRIFTED, why, SensorKind.WIND));
            forms.add(new Form(What.ICED, why, SensorKind.FREEZE));
            forms.add(new Form(What.LEAKED, why, SensorKind.FLOW));
        }
        for (What what : List.of(What.WATERED_WET_SOIL, What.DRIFTED, What.ICED, What.LEAKED, What.WENT_DRY)) {
            forms.add(new Form(what, Why.SCHEDULE, null));
        }
        for (Why why : List.of(Why.PLACE, Why.SETTING, Why.FAULT)) {
            forms.add(new Form(What.FALSE_ALARM, why, SensorKind.FLOW));
        }
        for (SensorKind kind : List.of(SensorKind.RAIN, SensorKind.WIND, SensorKind.FREEZE, SensorKind.SOIL)) {
            for (Why why : List.of(Why.PLACE, Why.SETTING, Why.FAULT, Why.HELD)) {
                forms.add(new Form(What.WENT_DRY, why, kind));
            }
            forms.add(new Form(kind == SensorKind.WIND ? What.SAVED_DRIFT : What.SAVED_WATER, Why.WORKED, kind));
            forms.add(new Form(What.SAVED_ICE, Why.WORKED, kind));
        }
        forms.add(new Form(What.WENT_DRY, Why.HELD, SensorKind.FLOW));
        forms.add(new Form(What.LEAK_SHUT, Why.WORKED, SensorKind.FLOW));
        return List.copyOf(forms);
    }

    /** All forms that a moment can have; there are no others. */
    public static List<Form> all() {
        return FORMS;
    }

    /** The form of a moment. */
    public static Form formOf(Moment moment) {
        return new Form(moment.what(), moment.why(), moment.sensor());
    }

    /**
     * The moments of what was lived, those that mattered most first. Lives two seasons; the lived one is not changed.
     *
     * @param lived a season, at any minute
     */
    public static List<Moment> of(Season lived) {
        return of(Story.of(lived));
    }

    static List<Moment> of(Story story) {
        WateringRules watering = new WateringRules(story);
        FlowRules flow = new FlowRules(story);
        List<Moment> all = new ArrayList<>();
        all.addAll(watering.wetSoil());
        all.addAll(watering.drift());
        all.addAll(watering.ice());
        all.addAll(flow.leaks());
        all.addAll(flow.falseAlarms());
        all.addAll(new DryRule(story).find());
        all.addAll(new SavedRule(story).find());
        all.addAll(flow.shut());
        all.sort(Comparator.comparingDouble((Moment m) -> -Math.abs(m.money()))
                .thenComparingLong(Moment::tick)
                .thenComparing(Moment::what));
        return List.copyOf(all);
    }

    /** The first few of each What, in the order given. */
    public static List<Moment> topOf(List<Moment> moments, int perRule) {
        Map<What, Integer> taken = new EnumMap<>(What.class);
        return moments.stream()
                .filter(m -> taken.merge(m.what(), 1, Integer::sum) <= perRule)
                .toList();
    }
}
