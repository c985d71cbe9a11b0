package provingyard.report;

import java.util.List;
import provingyard.picture.Surface;

/**
 * What the page of a service call's debrief tells, said where the call is known, in one language and one system of units.
 *
 * @param language {@code en} or {@code es}
 * @param title name of the page
 * @param site name of the site, for the foot of each sheet
 * @param about lines below the title
 * @param complaint what the owner said
 * @param unsafe what was unsafe, before all else; without sentences where nothing was
 * @param points the score and what it is out of
 * @param score what gave points, line by line
 * @param below what took points, and the water
 * @param answer what the trainee would change, held against the debrief; empty where they were not asked
 * @param plan the yard with what was likely at the end
 * @param remarks what stands out
 * @param tests the strip of tests as a table
 * @param curve bits against minutes
 * @param readings what each reading said
 * @param expert the expert's path
 */
public record CallStory(
        String language,
        String title,
        String site,
        List<String> about,
        String complaint,
        Part unsafe,
        Points points,
        Grid score,
        List<String> below,
        String answer,
        Plan plan,
        Remarks remarks,
        Part tests,
        Chart curve,
        Readings readings,
        Part expert) {

    /** The score, and what it is out of. */
    public record Points(String score, String of) {}

    /**
     * A table.
     *
     * @param head names of the columns
     * @param rows texts of each row
     * @param numbers how many of the last columns are numbers, at the right
     */
    public record Grid(List<String> head, List<List<String>> rows, int numbers) {
        public Grid {
            head = List.copyOf(head);
            rows = List.copyOf(rows);
        }
    }

    /** A part with its title, a quiet word beside it, sentences, and a table; null for none. */
    public record Part(String title, String aside, List<String> sentences, Grid grid) {
        public Part {
            sentences = List.copyOf(sentences);
        }
    }

    /** A picture of the yard as PNG, what it shows in words, and what its signs are. */
    public record Plan(byte[] png, String words, String legend) {}

    /** A sentence with the name of its sign. */
    public record Remark(String sign, String text) {}

    /** What stands out. */
    public record Remarks(String title, List<Remark> all) {
        public Remarks {
            all = List.copyOf(all);
        }
    }

    /** Draws a chart in a width of px, and gives the height taken. */
    public interface Drawing {
        double draw(Surface s, double width);
    }

    /** A chart with its title, a quiet word beside it, and what it shows in words. */
    public record Chart(String title, String aside, Drawing drawing, String words) {}

    /** What each reading said, one part each. */
    public record Readings(String title, List<Part> all) {
        public Readings {
            all = List.copyOf(all);
        }
    }

    public CallStory {
        about = List.copyOf(about);
        below = List.copyOf(below);
    }
}
