package provingyard.diagnosis;

import java.util.List;

/**
 * Dangers of a service call, in the order in which a debrief names them, with the keys of their texts. What the trainer
 * asks is general; local codes, licences and the employer's rules decide.
 *
 * <p>Sources: digging: 29 CFR 1926.651(b), duty to find buried utilities first. Backflow: testing and repair of
 * assemblies are for licensed or certified people in many places; rules differ. The others are common practice without
 * a source.
 */
public enum Hazard {
    /** Digging before buried lines were asked for and marked. */
    BURIED_LINES("gate.buriedLines.name", "gate.buriedLines.rule", "gate.buriedLines.breach"),
    /** Working on mains electricity. */
    MAINS("gate.mains.name", "gate.mains.rule", "gate.mains.breach"),
    /** Testing, opening or bypassing a backflow assembly. */
    BACKFLOW("gate.backflow.name", "gate.backflow.rule", "gate.backflow.breach"),
    /** Opening what is still under pressure. */
    PRESSURE("gate.pressure.name", "gate.pressure.rule", "gate.pressure.breach"),
    /** Wetting a walk that freezes, or one that people use, without a barrier. */
    SLIP("gate.slip.name", "gate.slip.rule", "gate.slip.breach");

    /** Key of the sentence that local rules decide; goes with each of them. */
    public static final String LOCAL_RULES = "gate.localRules";

    /** Key of the sentence that the program qualifies nobody for licensed work. */
    public static final String NO_LICENCE = "gate.noLicence";

    private final String name;
    private final String rule;
    private final String breach;

    Hazard(String name, String rule, String breach) {
        this.name = name;
        this.rule = rule;
        this.breach = breach;
    }

    /** Key of its name. */
    public String nameKey() {
        return name;
    }

    /** Key of what should be done. */
    public String ruleKey() {
        return rule;
    }

    /** Key of what was done unsafely. */
    public String breachKey() {
        return breach;
    }

    /** All keys of a hazard, in the order in which they are read. */
    public List<String> keys() {
        return List.of(name, rule, breach, LOCAL_RULES);
    }
}
