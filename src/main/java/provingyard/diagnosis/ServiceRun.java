package provingyard.diagnosis;

import java.util.ArrayList;
import java.util.List;

/**
 * A service call from the start to the statement: whoever plays it, each action is rated by what was known before it.
 *
 * @param steps what was done
 * @param inquiry how far it came
 * @param declared repair class stated; null as long as none is
 */
public record ServiceRun(List<Step> steps, Inquiry inquiry, String declared) {

    /** No policy goes on for longer. */
    private static final int MOST_STEPS = 400;

    /** What an action gives; the numbers of a simulator with its noise, or a draw. */
    @FunctionalInterface
    public interface Reader {

        /**
         * The reading of an action.
         *
         * @param state the state before its legs
         * @param n number of actions before it
         * @return null for actions that read nothing
         */
        Reading read(Action action, SiteState state, int n);
    }

    public ServiceRun {
        steps = List.copyOf(steps);
    }

    /** A run that begins. */
    public static ServiceRun at(Premises premises) {
        return new ServiceRun(List.of(), Inquiry.at(premises), null);
    }

    /** Lets a policy play to its statement. */
    public static ServiceRun play(Premises premises, Trust trust, Policy policy, Reader reader) {
        Ranking ranking = new Ranking(premises, trust);
        ServiceRun run = at(premises);
        for (int n = 0; n < MOST_STEPS; n++) {
            Move move = policy.next(run.inquiry());
            if (move instanceof Move.Declare declare) {
                return run.declare(declare.repairClass());
            }
            Action action = ((Move.Do) move).action();
            run = run.after(action, reader.read(action, run.inquiry().state(), n), ranking);
        }
        return run.declare(run.inquiry().belief().leading());
    }

    /** The run after one more action. */
    public ServiceRun after(Action action, Reading reading, Ranking ranking) {
        Inquiry next = inquiry.after(action, reading, ranking.premises(), ranking.trust());
        List<Step> more = new ArrayList<>(steps);
        more.add(step(action, reading != null && action.kind().judged(), next, ranking));
        return new ServiceRun(more, next, declared);
    }

    /** The run with its statement. */
    public ServiceRun declare(String repairClass) {
        return new ServiceRun(steps, inquiry, repairClass);
    }

    /** What the evidence gives the statement. */
    public double declaredProbability() {
        return inquiry.belief().ofClass(declared);
    }

    /** Minutes of what is judged: what a case's time and the reference's time mean. */
    public double testMinutes() {
        return steps.stream()
                .filter(s -> s.kind().judged())
                .mapToDouble(Step::minutes)
                .sum();
    }

    private Step step(Action action, boolean rated, Inquiry next, Ranking ranking) {
        Belief belief = inquiry.belief();
        double minutes = action.minutes(inquiry.state(), ranking.premises()::walk);
        double gain = rated ? ranking.worth(inquiry, action).gain() : 0;
        double bestRate = Math.max(gain / minutes, rated ? bestRate(ranking) : 0);
        return new Step(
                action.id(),
                action.kind(),
                gain,
                minutes,
                bestRate,
                belief.entropy(),
                next.belief().entropy(),
                action.target() == null ? 1 : belief.ofClass(action.target()),
                !rated || tellsApart(action, ranking),
                SafetyGates.breaches(action, inquiry.state()));
    }

    private double bestRate(Ranking ranking) {
        return ranking.of(inquiry).stream().findFirst().map(Ranked::rate).orElse(0.0);
    }

    private boolean tellsApart(Action action, Ranking ranking) {
        Belief belief = inquiry.belief();
        int rival = belief.rivalClass();
        if (rival < 0) {
            return true;
        }
        int one = belief.leadingIn(belief.leadingClass());
        return ranking.tellsApart(inquiry, action, one, belief.leadingIn(rival)) >= Step.REDUNDANT;
    }
}
