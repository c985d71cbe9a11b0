package provingyard.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import provingyard.quantity.Nearest;
import provingyard.scenario.Findings;
import provingyard.scenario.Problem;
import provingyard.scenario.Problem.Code;
import provingyard.scenario.Read;
import provingyard.scenario.Scenario;
import provingyard.scenario.ServiceCall;
import provingyard.scenario.ServiceCall.Seen;
import provingyard.scenario.Severity;

/** What a service call says of tests fits the site: only the site, made ready, knows which tests it has. */
public final class CallChecks {

    /** So many known names are listed in a message. */
    private static final int LISTED = 12;

    private final Findings findings;
    private final ServiceCall call;
    private final Map<String, FieldTest> byId = new TreeMap<>();

    private CallChecks(Findings findings, Scenario scenario) {
        this.findings = findings;
        call = scenario.call();
        // Without what is to be checked, so that a mistake in it cannot keep the site from being made ready.
        ServiceCall plain = new ServiceCall(
                call.complaint(), List.of(), call.shown(), call.arrives(), call.deals(), List.of(), call.house());
        CallSite.of(scenario.called(plain, scenario.faults())).tests().stream()
                .filter(t -> t.measure() != null)
                .forEach(t -> byId.put(t.id(), t));
    }

    /** A site that was read, its problems joined by those of its service call; any other site as it is. */
    public static Read<Scenario> check(String file, Read<Scenario> read) {
        if (!read.ok() || read.value().call() == null) {
            return read;
        }
        Findings findings = new Findings(file, read.places(), "");
        read.problems().forEach(findings::take);
        new CallChecks(findings, read.value()).run();
        List<Problem> problems = findings.sorted();
        return new Read<>(findings.hasErrors() ? null : read.value(), problems, read.places());
    }

    private void run() {
        List<String> kinds =
                byId.values().stream().map(FieldTest::kind).distinct().toList();
        for (int i = 0; i < call.tests().size(); i++) {
            if (!kinds.contains(call.tests().get(i))) {
                unknown("/call/tests/" + i, call.tests().get(i), kinds);
            }
        }
        for (int i = 0; i < call.seen().size(); i++) {
            seen(call.seen().get(i), "/call/seen/" + i);
        }
    }

    private void unknown(String at, String name, List<String> known) {
        String maybe = Nearest.of(name, known).orElse("");
        String more = known.size() > LISTED ? ", \u2026" : "";
        String listed = String.join(", ", known.subList(0, Math.min(LISTED, known.size()))) + more;
        findings.add(Severity.ERROR, Code.REF_UNKNOWN, at, name, List.of("test", listed), maybe);
    }

    private void seen(Seen seen, String at) {
        FieldTest test = byId.get(seen.test());
        if (test == null || !isAllowed(test)) {
            unknown(at + "/test", seen.test(), known(seen.test()));
        } else if (test.measure() instanceof FieldTest.Measure.Answers answers) {
            answered(seen, answers.keys(), at);
        } else {
            measured(seen, ((FieldTest.Measure.Number) test.measure()).quantity(), at);
        }
    }

    /** Tests that may have been meant: those of the named kind, or all where there is no such kind. */
    private List<String> known(String name) {
        String kind = name.split(":")[0];
        List<FieldTest> allowed = byId.values().stream().filter(this::isAllowed).toList();
        List<String> alike = allowed.stream()
                .filter(t -> t.kind().equals(kind))
                .map(FieldTest::id)
                .toList();
        return alike.isEmpty() ? allowed.stream().map(FieldTest::id).toList() : alike;
    }

    private boolean isAllowed(FieldTest test) {
        return call.tests().isEmpty() || call.tests().contains(test.kind());
    }

    private void answered(Seen seen, List<String> keys, String at) {
        if (seen.answers().isEmpty()) {
            findings.error(Code.REF_NEEDS, at, seen.test(), "answers");
        }
        if (seen.above() > 0) {
            findings.error(Code.REF_SEEN, at + "/above", seen.test(), "above", "answers");
        }
        for (int k = 0; k < seen.answers().size(); k++) {
            String answer = seen.answers().get(k);
            if (!keys.contains(answer)) {
                String maybe = Nearest.of(answer, keys).orElse("");
                List<String> allowed = new ArrayList<>(List.of(String.join(", ", keys)));
                findings.add(Severity.ERROR, Code.SCH_CHOICE, at + "/answers/" + k, answer, allowed, maybe);
            }
        }
    }

    private void measured(Seen seen, FieldTest.Quantity quantity, String at) {
        if (quantity != FieldTest.Quantity.FLOW) {
            findings.error(Code.REF_UNSEEN, at + "/test", seen.test());
            return;
        }
        if (seen.above() <= 0) {
            findings.error(Code.REF_NEEDS, at, seen.test(), "above");
        }
        if (!seen.answers().isEmpty()) {
            findings.error(Code.REF_SEEN, at + "/answers", seen.test(), "answers", "above");
        }
    }
}
