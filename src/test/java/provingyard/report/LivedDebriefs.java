package provingyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import provingyard.scenario.SensorKind;
import provingyard.scenario.Sites;
import provingyard.scenario.YardPlan;
import provingyard.score.Score;
import provingyard.season.Outcome;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.References;
import provingyard.setup.SetUp;
import provingyard.study.Amounts;
import provingyard.study.Choice;
import provingyard.study.Commitment;
import provingyard.study.Comparison;
import provingyard.study.Debrief;
import provingyard.study.Mark;
import provingyard.study.MarkStore;
import provingyard.study.Moment;
import provingyard.study.Shares;
import provingyard.study.Standing;
import provingyard.study.Worth;

/** Debriefs of really lived seasons; shares, worth, moments and the night are made by hand. */
final class LivedDebriefs {

    static final String SLY = "<script>alert(1)</script>";

    private static final double[] WEIGHTS = {-0.1, 0.12, 0.85, 0, 0.13};

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
                d.moments(),
                d.shares(),
                d.worth(),
                Optional.of(new Commitment(Choice.WIND, learner)),
                learner);
        return new Story(other, learner, story.icing(), story.sentences());
    }

    /** The same story with what was only counted and lived: no shares, worth, moments or ice. */
    static Story bare(Story story) {
        Debrief d = story.debrief();
        return Story.of(new Debrief(
                d.season(),
                d.standing(),
                d.clock(),
                d.best(),
                d.mark(),
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                ""));
    }

    /** The same story of a site whose mark nobody knows. */
    static Story withoutMark(Story story) {
        Debrief d = story.debrief();
        Standing standing = new Standing(
                d.standing().clock(),
                d.standing().trainee(),
                Optional.empty(),
                Score.none(Score.Reason.MARK_NOT_KNOWN));
        return Story.of(new Debrief(
                d.season(),
                standing,
                d.clock(),
                Optional.empty(),
                Optional.empty(),
                d.moments(),
                Optional.empty(),
                List.of(),
                d.commitment(),
                d.learner()));
    }

    /** The same story with all five kinds placed, so far as its pages of worth know. */
    static Story withWorth(Story story, boolean placed) {
        return new Story(story.debrief().with(worth(placed)), story.setUp(), story.icing(), story.sentences());
    }

    private static Story make(String id, String reference) {
        Site site = Site.of(Sites.open(id).orThrow());
        Optional<Mark> mark = MarkStore.find(site);
        SetUp setUp = reference.equals("mark")
                ? mark.orElseThrow().setUp()
                : References.careless(site.scenario()).orElseThrow();
        Season season = lived(site, setUp);
        Standing standing = new Comparison(
                        site,
                        site.scenario().season().seed(),
                        site.scenario().season().days(),
                        mark,
                        Optional.empty())
                .with(season.outcome(), setUp);
        Debrief debrief = new Debrief(
                season,
                standing,
                outcome(site, SetUp.CLOCK_ALONE),
                mark.map(m -> outcome(site, m.setUp())),
                mark,
                moments(season),
                Optional.of(shares(standing)),
                worth(false),
                Optional.of(new Commitment(Choice.FREEZE, "It read the warm wall and not the walk.")),
                "Ana");
        Function<Moment, String> sentences =
                m -> "It happened at minute " + m.tick() + ": the freeze sensor at the warm"
                        + " vent read 4.1\u00a0°C while the walk stood at \u22121.2\u00a0°C, so zones 1 to 4 ran at 05:00 and 31\u00a0m² iced over.";
        return Story.of(debrief).named(reference).with(icing(season)).with(sentences);
    }

    private static Season lived(Site site, SetUp setUp) {
        Season season = Season.begin(site, setUp);
        season.liveToEnd();
        return season;
    }

    private static Outcome outcome(Site site, SetUp setUp) {
        return lived(site, setUp).outcome();
    }

    private static Shares shares(Standing standing) {
        Amounts gap =
                Amounts.of(standing.trainee()).minus(Amounts.of(standing.mark().orElseThrow()));
        List<Shares.Share> shares = new ArrayList<>();
        for (SensorKind kind : SensorKind.values()) {
            shares.add(new Shares.Share(Choice.of(kind), gap.times(WEIGHTS[kind.ordinal()])));
        }
        return new Shares(gap, shares);
    }

    private static List<Worth> worth(boolean all) {
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
                    4,
                    48));
        }
        return worth;
    }

    private static Worth.Span span(double mean) {
        return new Worth.Span(mean, mean - 0.4 * Math.abs(mean), mean + 1.1 * Math.abs(mean));
    }

    private static List<Moment> moments(Season season) {
        List<Moment> moments = new ArrayList<>();
        double[] money = {186.2, -640, 9.13, -14.5, -402};
        for (int i = 0; i < money.length; i++) {
            moments.add(new Moment(
                    1440L * (3 + 4 * i) + 300,
                    1440L * (3 + 4 * i) + 420,
                    money[i] > 0 ? Moment.What.ICED : Moment.What.SAVED_ICE,
                    money[i] > 0 ? Moment.Why.PLACE : Moment.Why.WORKED,
                    SensorKind.FREEZE,
                    List.of("north-walk"),
                    3.4,
                    money[i],
                    List.of(4.1, -1.2)));
        }
        return moments;
    }

    private static Icing icing(Season season) {
        var now = season.snapshot();
        float[] hours = new float[now.nx() * now.ny()];
        double cell = season.site().scenario().yard().size().x() / now.nx();
        for (int i = 0; i < hours.length; i++) {
            boolean paved = !Float.isNaN(now.paving()[i]);
            boolean north = (i / now.nx()) * cell
                    > 0.6 * season.site().scenario().yard().size().y();
            hours[i] = paved && north ? 3 : 0;
        }
        return new Icing(now.nx(), now.ny(), hours, night(season));
    }

    private static Icing.Night night(Season season) {
        int n = 14 * 12;
        double[] air = new double[n];
        double[] surface = new double[n];
        double[] sensor = new double[n];
        for (int i = 0; i < n; i++) {
            double t = i / (double) n;
            air[i] = 5 - 7 * Math.sin(Math.PI * t);
            surface[i] = air[i] - 1.2 + 0.8 * t;
            sensor[i] = air[i] + 3.4 + 0.2 * Math.sin(i);
        }
        String walk = season.site().scenario().yard().surfaces().stream()
                .filter(s -> s.kind() == YardPlan.SurfaceKind.WALK)
                .findFirst()
                .orElseThrow()
                .id();
        long from = 1440L * 12 + 18 * 60;
        return new Icing.Night(
                from,
                5,
                walk,
                air,
                surface,
                sensor,
                2.5,
                List.of(new Icing.Stretch(from + 660, from + 684)),
                List.of(new Icing.Stretch(from + 668, from + 800)));
    }
}
