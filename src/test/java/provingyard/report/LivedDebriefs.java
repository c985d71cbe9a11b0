package provingyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.score.Score;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.study.Choice;
import provingyard.study.Commitment;
import provingyard.study.Debrief;
import provingyard.study.Debriefing;
import provingyard.study.Mark;
import provingyard.study.MarkStore;
import provingyard.study.Progress;
import provingyard.study.Shares;
import provingyard.study.SharesStudy;
import provingyard.study.Standing;
import provingyard.study.WholeWorth;
import provingyard.study.Worth;
import provingyard.study.WorthStudy;

/** Debriefs of really lived seasons, their shares worked out; what sensors are worth takes too long and is made by hand. */
final class LivedDebriefs {

    static final String SLY = "<script>alert(1)</script>";

    private static final Story CLINIC = make("quillback-clinic", "careless");
    private static final Story WHOLE = make("quillback-clinic", "mark");

    private LivedDebriefs() {}

    /** The clinic under its careless set-up, lived once for all tests. */
    static Story clinic() {
        return CLINIC;
    }

    /** The clinic under the mark's set-up. */
    static Story clinicAsTheMark() {
        return WHOLE;
    }

    /** The same story told of another learner, with another reason and set-up's name. */
    static Story told(Story story, String learner) {
        Debrief d = story.debrief();
        Debrief other = new Debrief(
                d.season(),
                d.standing(),
                d.clock(),
                d.best(),
                d.mark(),
                d.chronicle(),
                d.moments(),
                d.shares(),
                d.worth(),
                Optional.of(new Commitment(Choice.WIND, learner)),
                learner);
        return new Story(other, learner);
    }

    /** The same story with what was only counted and lived: no shares, worth or moments. */
    static Story bare(Story story) {
        Debrief d = story.debrief();
        return new Story(
                new Debrief(
                        d.season(),
                        d.standing(),
                        d.clock(),
                        d.best(),
                        d.mark(),
                        d.chronicle(),
                        List.of(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        ""),
                "");
    }

    /** The same story of a site whose mark nobody knows. */
    static Story withoutMark(Story story) {
        Debrief d = story.debrief();
        Standing standing = new Standing(
                d.standing().clock(),
                d.standing().trainee(),
                Optional.empty(),
                Score.none(Score.Reason.MARK_NOT_KNOWN));
        return new Story(
                new Debrief(
                        d.season(),
                        standing,
                        d.clock(),
                        Optional.empty(),
                        Optional.empty(),
                        d.chronicle(),
                        d.moments(),
                        Optional.empty(),
                        Optional.empty(),
                        d.commitment(),
                        d.learner()),
                "");
    }

    /** The same story with all five kinds placed, so far as its pages of worth know. */
    static Story withWorth(Story story, boolean placed) {
        return new Story(story.debrief().with(worth(placed, 4)), story.setUp());
    }

    private static Story make(String id, String reference) {
        Site site = Site.of(Sites.open(id).orThrow());
        Mark mark = MarkStore.find(site).orElseThrow();
        SetUp setUp = reference.equals("mark")
                ? mark.setUp()
                : References.careless(site.scenario()).orElseThrow();
        Season season = Season.begin(site, setUp);
        season.liveToEnd();
        Debrief lost = Debriefing.of(season, Optional.of(mark), "Ana");
        Shares shares = SharesStudy.of(season, mark.setUp(), lost.standing().mark(), Progress.SILENT);
        Debrief debrief = lost.with(shares)
                .with(worth(false, 4))
                .with(new Commitment(Choice.FLOW, "It sat behind the first branch and saw half of it."));
        return new Story(debrief, reference);
    }

    /** What sensors are worth, made by hand. */
    static WorthStudy.Result worth(boolean all, double seasonsAYear) {
        List<Worth> worth = new ArrayList<>();
        double[] price = {68, 145, 108, 310, 244};
        double[] saves = {53, 21.4, 310, 97.5, -3.2};
        for (SensorKind kind : SensorKind.values()) {
            double money = saves[kind.ordinal()];
            boolean placed = all || kind == SensorKind.RAIN || kind == SensorKind.FREEZE || kind == SensorKind.FLOW;
            worth.add(new Worth(
                    kind,
                    price[kind.ordinal()],
                    placed,
                    span(money / 6),
                    new Worth.Span(kind == SensorKind.FREEZE ? 412 : 0, 0, kind == SensorKind.FREEZE ? 980 : 0),
                    span(money),
                    seasonsAYear,
                    48));
        }
        WholeWorth whole = new WholeWorth(875, span(71), new Worth.Span(398, 0, 960), span(431), seasonsAYear, 48);
        return new WorthStudy.Result(worth, whole, 0);
    }

    private static Worth.Span span(double mean) {
        return new Worth.Span(mean, mean - 0.4 * Math.abs(mean), mean + 1.1 * Math.abs(mean));
    }
}
