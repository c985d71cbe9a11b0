package provingyard.call;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import provingyard.diagnosis.Action;
import provingyard.diagnosis.Instrument;
import provingyard.diagnosis.Reading;
import provingyard.diagnosis.ServiceRun;
import provingyard.diagnosis.SiteState;
import provingyard.numeric.RandomStreams;

/**
 * What instruments and eyes show in one case: the model's value, with noise from a stream named after seed, test,
 * configuration and how often it was read so, so that another test in between shifts nothing. What nature draws once, such
 * as whether a leak shows at the surface, is drawn from the test's latent key alone. Not for several threads.
 */
final class Instruments implements ServiceRun.Reader {

    private final CallSite site;
    private final Case wrong;
    private final RandomStreams streams;
    private final Map<String, Integer> times = new HashMap<>();

    Instruments(CallSite site, Case wrong, long seed) {
        this.site = site;
        this.wrong = wrong;
        streams = new RandomStreams(seed);
    }

    @Override
    public Reading read(Action action, SiteState state, int n) {
        FieldTest test = site.test(action.id()).orElseThrow();
        if (test.measure() == null) {
            return null;
        }
        Expected expected = site.expected(test, state, wrong);
        Optional<String> latent = action.latentKey(state);
        String name = latent.orElse(action.id() + "|" + action.after(state).configuration());
        int nth = latent.isPresent() ? 0 : times.merge(name, 1, Integer::sum) - 1;
        long key = streams.key("reading." + name);
        return expected instanceof Expected.Number number
                ? shown(number.value(), (FieldTest.Measure.Number) test.measure(), key, nth)
                : seen(((Expected.Odds) expected).probabilities(), RandomStreams.uniform(key, nth));
    }

    private static Reading shown(double value, FieldTest.Measure.Number measure, long key, int nth) {
        Instrument instrument = measure.instrument();
        double relative = instrument.relative() * value;
        double variance = instrument.sigma() * instrument.sigma()
                + relative * relative
                + measure.supplySigma() * measure.supplySigma();
        return new Reading.Shown(instrument.shown(value + Math.sqrt(variance) * RandomStreams.gaussian(key, nth)));
    }

    private static Reading seen(List<Double> odds, double chance) {
        double sum = 0;
        for (int i = 0; i < odds.size(); i++) {
            sum += odds.get(i);
            if (chance < sum) {
                return new Reading.Seen(i);
            }
        }
        return new Reading.Seen(odds.size() - 1);
    }
}
