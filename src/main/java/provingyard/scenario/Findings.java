package provingyard.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import provingyard.scenario.Problem.Code;
import provingyard.scenario.SourceMap.Spot;

/** Collects the problems of one document, with their places. */
public final class Findings {

    /** More problems than this are not listed; nobody reads on. */
    public static final int MOST = 500;

    private final String file;
    private final SourceMap places;
    private final String base;
    private final List<Problem> problems = new ArrayList<>();

    /**
     * Findings of a document.
     *
     * @param file its name
     * @param places where its values stand
     * @param base pointer of this document within the file; empty when it is the whole file
     */
    public Findings(String file, SourceMap places, String base) {
        this.file = file;
        this.places = places;
        this.base = base;
    }

    /** Adds a problem at a value. */
    public void add(Severity severity, Code code, String pointer, String found, List<String> details, String maybe) {
        add(severity, code, places.of(base + pointer), pointer, found, details, maybe);
    }

    /** Adds an error at a value. */
    public void error(Code code, String pointer, String found, String... details) {
        add(Severity.ERROR, code, pointer, found, List.of(details), "");
    }

    /** Adds a warning at a value. */
    public void warn(Code code, String pointer, String found, String... details) {
        add(Severity.WARNING, code, pointer, found, List.of(details), "");
    }

    /** Adds an error at a property's name. */
    public void errorAtKey(Code code, String pointer, String found, List<String> details, String maybe) {
        add(Severity.ERROR, code, places.ofKey(base + pointer), pointer, found, details, maybe);
    }

    /** Adds an error at a spot. */
    void error(Code code, Spot spot, String pointer, String found, String... details) {
        add(Severity.ERROR, code, spot, pointer, found, List.of(details), "");
    }

    private void add(
            Severity severity, Code code, Spot spot, String pointer, String found, List<String> details, String maybe) {
        Problem problem =
                new Problem(code, severity, file, spot.line(), spot.column(), base + pointer, found, details, maybe);
        if (problems.size() < MOST && !problems.contains(problem)) {
            problems.add(problem);
        }
    }

    /** Adds a problem that was found elsewhere. */
    void take(Problem problem) {
        problems.add(problem);
    }

    /** Whether an error is among them. */
    public boolean hasErrors() {
        return problems.stream().anyMatch(Problem::isError);
    }

    /** All, errors first, then in the order of the file. */
    public List<Problem> sorted() {
        List<Problem> sorted = new ArrayList<>(problems);
        sorted.sort(Comparator.comparing(Problem::severity)
                .thenComparingInt(Problem::line)
                .thenComparingInt(Problem::column));
        return List.copyOf(sorted);
    }
}
