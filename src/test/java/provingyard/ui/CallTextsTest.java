package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.call.CallSite;
import provingyard.call.FieldTest;
import provingyard.call.Tool;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.FaultPlan;
import provingyard.scenario.ServiceCall;
import provingyard.scenario.Text;
import provingyard.scenario.Work;
import provingyard.text.Texts;

/** Everything that the shipped service calls can show has a name. */
class CallTextsTest {

    private static List<CallSite> sites;

    @BeforeAll
    static void sites() {
        sites = ProvingYardApp.sites().stream()
                .filter(s -> s.work() == Work.SERVICE_CALL)
                .map(CallSite::of)
                .toList();
    }

    @Test
    void everythingHasANameInBothLanguagesAndUnits() {
        assertTrue(sites.size() >= 6, "service calls: " + sites.size());
        for (CallSite site : sites) {
            for (String language : Texts.LANGUAGES) {
                for (UnitSystem units : UnitSystem.values()) {
                    Words words = new Words();
                    words.speak(language);
                    words.units().set(units);
                    said(site, new CallWords(site, words), language)
                            .forEach(s -> assertFalse(
                                    s.contains("[[") || s.isBlank(),
                                    site.scenario().id() + " " + language + ": " + s));
                }
            }
        }
    }

    /** What an owner can have seen is said in both languages, with the place by its name. */
    @Test
    void ownersSayWhatTheySaw() {
        List<String> visible = List.of("walkZone", "lookAtHeads", "look", "readMeter", "readRecords");
        Set<String> well = Set.of("allWell", "headsDry", "dry", "asPlanned");
        Set<String> said = new TreeSet<>();
        for (CallSite site : sites) {
            for (FieldTest test : site.tests()) {
                List<String> keys =
                        test.measure() instanceof FieldTest.Measure.Answers answers ? answers.keys() : List.of("");
                for (String key : visible.contains(test.kind()) ? keys : List.<String>of()) {
                    if (!well.contains(key)) {
                        List<String> answer = key.isEmpty() ? List.of() : List.of(key);
                        Text text = DrillWords.complaint(site, List.of(new ServiceCall.Seen(test.id(), answer, 0)));
                        said.addAll(List.of(text.en(), text.es()));
                        assertNotEquals(text.en(), text.es());
                    }
                }
            }
        }
        assertTrue(said.size() > 200, "sentences: " + said.size());
        said.forEach(s -> assertFalse(s.contains("[[") || s.contains("{") || s.isBlank(), s));
    }

    private static List<String> said(CallSite site, CallWords texts, String language) {
        List<String> said = new ArrayList<>();
        for (FieldTest test : site.tests()) {
            said.addAll(List.of(texts.name(test), texts.does(test), texts.brief(test)));
            if (test.measure() instanceof FieldTest.Measure.Answers answers) {
                answers.keys().forEach(k -> said.add(Texts.of("call", language).say("answer." + k)));
            }
        }
        for (String each : site.hypotheses().classes()) {
            said.add(texts.finding(each));
            said.add(texts.place(each));
        }
        for (Tool tool : Tool.values()) {
            said.add(texts.tool(tool));
        }
        return said;
    }

    @Test
    void placesOfAKindAreToldApart() {
        for (CallSite site : sites) {
            CallWords texts = new CallWords(site, new Words());
            List<String> names =
                    site.hypotheses().classes().stream().map(texts::finding).toList();
            Set<String> different = new TreeSet<>(names);
            assertEquals(names.size(), different.size(), () -> site.scenario().id() + ": " + twice(names));
        }
    }

    private static List<String> twice(List<String> names) {
        return names.stream()
                .filter(n -> names.stream().filter(n::equals).count() > 1)
                .distinct()
                .toList();
    }

    /** Breaks and leaks of mains are one repair; all other kinds have their own name. */
    @Test
    void everyKindOfFaultHasAName() {
        Texts texts = Texts.of("call", "en");
        for (FaultPlan.Kind kind : FaultPlan.Kind.values()) {
            String name = camel(kind);
            boolean shared = name.startsWith("mainline") || name.startsWith("lateral");
            assertTrue(shared || texts.has("fault." + name), name);
        }
        assertTrue(texts.has("fault.main") && texts.has("fault.lateral") && texts.has("fault.none"));
    }

    private static String camel(FaultPlan.Kind kind) {
        StringBuilder name = new StringBuilder();
        for (String part : kind.name().toLowerCase(Locale.ROOT).split("_")) {
            name.append(name.isEmpty() ? part : Character.toUpperCase(part.charAt(0)) + part.substring(1));
        }
        return name.toString();
    }
}
