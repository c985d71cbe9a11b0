package provingyard.report;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import provingyard.picture.Layer;
import provingyard.picture.Marks;
import provingyard.picture.Theme;
import provingyard.picture.View;
import provingyard.picture.YardPicture;
import provingyard.picture.YardShapes;
import provingyard.scenario.Point;
import provingyard.season.Season;
import provingyard.season.Snapshot;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;

/** The yard of a lived season for pages, by day whatever the hour, with letters that can be read in a column. */
final class PlanPictures {

    private static final int WIDTH = 1400;
    /** px of the picture to one px of the column. */
    private static final double DENSITY = 2;

    /** By day at any hour: paper has no night. */
    private static final Theme PRINT = new Theme(
            "print",
            false,
            Theme.LIGHT.colours(),
            Theme.LIGHT.shadow(),
            Theme.LIGHT.wetness(),
            Theme.LIGHT.grain() / 2,
            DENSITY * 0.9,
            Theme.LIGHT.letters(),
            Theme.LIGHT.marker() * DENSITY * 0.9);

    /** Metres from which two sensors of a kind stand at different places. */
    private static final double APART = 0.5;

    private final Season season;
    private final YardShapes shapes;
    private final View view;

    /** {@code lettering}: size of the plan's letters beside the program's on a screen. */
    PlanPictures(Season season, PageWords words, double lettering) {
        this.season = season;
        shapes = YardShapes.of(season.site().scenario());
        Point size = season.site().scenario().yard().size();
        int height = (int) Math.round(WIDTH * Math.max(0.3, Math.min(1, size.y() / size.x())));
        view = View.fit(size, WIDTH, height, View.Free.ALL, PRINT)
                .in(words.language(), words.units())
                .lettering(lettering);
    }

    /** The plan with the sensors of the season's set-up, and others' as ghosts. */
    byte[] sensors(List<Placement> ghosts) {
        View seen = view.layers(EnumSet.of(Layer.PIPES)).marks(Marks.NONE.ghosts(elsewhere(ghosts)));
        return PageCharts.png(YardPicture.render(shapes, season.setUp(), quiet(), seen));
    }

    /** Ghosts that do not stand where a sensor of their kind stands. */
    private List<Placement> elsewhere(List<Placement> ghosts) {
        return ghosts.stream()
                .filter(g -> season.setUp().of(g.kind()).stream().noneMatch(p -> together(g, p)))
                .toList();
    }

    /** Whether two sensors stand at the same place. */
    boolean together(Placement one, Placement other) {
        var siting = season.site().siting();
        return siting.place(one).distance(siting.place(other)) < APART
                && Math.abs(siting.heightOf(one) - siting.heightOf(other)) < APART;
    }

    /** The plan with the walks that carried ice hatched. */
    byte[] iced(List<String> walks) {
        View seen = view.layers(Set.of()).marks(Marks.NONE.iced(walks));
        return PageCharts.png(YardPicture.render(shapes, SetUp.CLOCK_ALONE, quiet(), seen));
    }

    /** The season's last minute with clear and dry paving, and sensors that say nothing. */
    private Snapshot quiet() {
        Snapshot s = season.snapshot();
        return new Snapshot(
                s.tick(),
                s.clock(),
                s.sky(),
                s.nx(),
                s.ny(),
                s.wetness(),
                new float[s.film().length],
                new float[s.ice().length],
                s.stress(),
                s.cold(),
                s.paving(),
                s.zones(),
                s.heads(),
                s.links(),
                List.of(),
                s.leaks(),
                s.masterOpen(),
                s.supplyFlow(),
                s.ledger(),
                s.spent());
    }
}
