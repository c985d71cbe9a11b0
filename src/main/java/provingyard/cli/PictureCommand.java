package provingyard.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import provingyard.picture.Theme;
import provingyard.picture.View;
import provingyard.picture.YardPicture;
import provingyard.scenario.Scenario;
import provingyard.season.Season;
import provingyard.season.Site;
import provingyard.setup.SetUp;
import provingyard.text.Texts;

/** Draws a site's yard to a PNG file, without a display. */
@Command(name = "picture")
final class PictureCommand implements Callable<Integer> {

    private static final Pattern SIZE = Pattern.compile("(\\d{2,4})x(\\d{2,4})");
    private static final int LEAST = 64;
    private static final int MOST = 8000;
    private static final Map<String, Theme> THEMES = Map.of(
            "light", Theme.LIGHT,
            "dark", Theme.DARK,
            "night", Theme.NIGHT,
            "contrast", Theme.HIGH_CONTRAST,
            "projector", Theme.PROJECTOR);

    @Spec
    private CommandSpec spec;

    @Mixin
    private Common common;

    @Parameters(paramLabel = "SITE", descriptionKey = "run.site")
    private String site;

    @Option(names = "--out", required = true, paramLabel = "FILE.png", descriptionKey = "picture.out")
    private Path out;

    @Option(names = "--minute", paramLabel = "N", descriptionKey = "picture.minute")
    private Long minute;

    @Option(names = "--setup", paramLabel = "FILE|careless|textbook|mark", descriptionKey = "picture.setup")
    private String setUpName;

    @Option(names = "--size", paramLabel = "WxH", defaultValue = "1280x720", descriptionKey = "picture.size")
    private String size;

    @Option(names = "--theme", paramLabel = "NAME", defaultValue = "light", descriptionKey = "picture.theme")
    private String theme;

    @Override
    public Integer call() {
        common.check();
        PrintWriter err = spec.commandLine().getErr();
        Texts texts = common.texts();
        Matcher wanted = SIZE.matcher(size);
        boolean sized = wanted.matches() && inRange(wanted.group(1)) && inRange(wanted.group(2));
        if (!sized) {
            err.println(texts.say("bad.size", size));
            return Main.BAD_INPUT;
        }
        if (!THEMES.containsKey(theme)) {
            err.println(texts.say("bad.theme", theme));
            return Main.BAD_INPUT;
        }
        Inputs inputs = new Inputs(texts, err);
        Optional<Scenario> scenario = inputs.site(site);
        if (scenario.isEmpty()) {
            return Main.BAD_INPUT;
        }
        long end = scenario.get().season().days() * 1440L;
        if (minute != null && (minute < 0 || minute > end)) {
            err.println(texts.say("bad.minute", Long.toString(end), Long.toString(minute)));
            return Main.BAD_INPUT;
        }
        Site ready = Site.of(scenario.get());
        Optional<SetUp> setUp = inputs.setUp(setUpName, ready);
        return setUp.isEmpty()
                ? Main.BAD_INPUT
                : draw(ready, setUp.get(), Integer.parseInt(wanted.group(1)), Integer.parseInt(wanted.group(2)));
    }

    private static boolean inRange(String side) {
        int px = Integer.parseInt(side);
        return px >= LEAST && px <= MOST;
    }

    private int draw(Site ready, SetUp setUp, int width, int height) {
        Season season = Season.begin(ready, setUp);
        while (minute != null && season.tick() < minute) {
            season.advance();
        }
        View view = View.fit(ready.scenario().yard().size(), width, height, View.Free.ALL, THEMES.get(theme))
                .in(common.language(), common.units());
        BufferedImage picture = YardPicture.render(ready.scenario(), setUp, season.snapshot(), view);
        try (OutputStream to = Files.newOutputStream(out)) {
            YardPicture.writePng(picture, to);
            return Main.GOOD;
        } catch (IOException e) {
            spec.commandLine()
                    .getErr()
                    .println(common.texts().say("bad.write", out, TextFile.reason(e, common.texts())));
            return Main.BAD_INPUT;
        }
    }
}
