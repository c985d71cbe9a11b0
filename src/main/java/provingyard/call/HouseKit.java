package provingyard.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provingyard.call.FieldTest.Measure;
import provingyard.call.FieldTest.Quantity;
import provingyard.diagnosis.Action.Leg;
import provingyard.diagnosis.SiteState;

/**
 * Which side of the point of connection the water runs on, where the meter serves a house too: the irrigation's own shut-off
 * is shut and the meter read again. What stops is irrigation's, what moves on is the house's. Minutes and accuracies are common
 * practice, no source.
 */
final class HouseKit implements TestKit {

    static final String HOUSE = "shutIrrigation";

    private static final double READ = 2;

    private final Ground ground;
    private final List<FieldTest> tests;

    HouseKit(Ground ground) {
        this.ground = ground;
        boolean apart = !ground.pointOfConnection().equals(ground.meter());
        tests = ground.scenario().call().house() && apart ? List.of(shut()) : List.of();
    }

    private FieldTest shut() {
        String shutOff = ground.pointOfConnection();
        List<Leg> legs = new ArrayList<>();
        for (Leg leg : ground.allOpen(true)) {
            if (!leg.place().equals(shutOff)) {
                legs.add(leg);
            }
        }
        legs.add(new Leg(shutOff, Ground.TURN, Map.of(Handled.valve(shutOff), Handled.SHUT)));
        legs.add(new Leg(ground.meter(), READ, Map.of()));
        Measure measure = new Measure.Number(Quantity.FLOW, PipeKit.WATCHED, 0);
        var at = ground.places().get(shutOff);
        return FieldTest.plain(HOUSE, "", at, Tool.ISOLATE, legs, measure, null);
    }

    @Override
    public List<FieldTest> tests() {
        return tests;
    }

    @Override
    public Expected expected(FieldTest test, SiteState state, Case wrong) {
        return new Expected.Number(ground.atRest(state, wrong).supply());
    }
}
