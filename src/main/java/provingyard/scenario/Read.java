package provingyard.scenario;

import java.util.List;

/**
 * What reading a document gave.
 *
 * @param value the document, or null when a problem is an error
 * @param problems everything that was found, errors first
 * @param places where its values stand in the text
 */
public record Read<T>(T value, List<Problem> problems, SourceMap places) {

    public Read {
        problems = List.copyOf(problems);
    }

    /** Whether there is a document. */
    public boolean ok() {
        return value != null;
    }

    /** The errors alone. */
    public List<Problem> errors() {
        return problems.stream().filter(Problem::isError).toList();
    }

    /**
     * The document, where it is known to be right.
     *
     * @throws IllegalStateException with the problems, when it is not
     */
    public T orThrow() {
        if (value == null) {
            StringBuilder text = new StringBuilder("the document has errors:");
            errors().forEach(p -> text.append('\n').append(p.line("en")));
            throw new IllegalStateException(text.toString());
        }
        return value;
    }
}
