package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Image;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.setup.SetUp;

/**
 * Ten states of the screen look as somebody approved them. After a wanted change look at {@code target/approved/}, and
 * approve by {@code mvn -q test -Dtest=ApprovedPicturesTest -Dapprove=true}.
 */
class ApprovedPicturesTest {

    private static final Path APPROVED = Path.of("src", "test", "resources", "provingyard", "ui", "approved");
    private static final Path NOW = Path.of("target", "approved");

    /** Pictures are kept at half size: letters' edges may differ by a shade, shapes and places may not. */
    private static final int SHRINK = 2;

    private static final int SHADES = 40;
    private static final double SHARE = 0.002;

    private static OpenProgram program;

    @BeforeAll
    static void open() throws Exception {
        program = OpenProgram.show(1280, 720);
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
    }

    private static void looksAsApproved(String name) throws Exception {
        if (program.shell().yard() != null) {
            program.untilTheYardIsDrawn();
        }
        BufferedImage[] taken = new BufferedImage[1];
        OpenProgram.ROBOT.interact(() -> taken[0] = Shot.of(program.shell().scene(), 1));
        BufferedImage now = shrunk(taken[0]);
        Path approved = APPROVED.resolve(name + ".png");
        if (Boolean.getBoolean("approve")) {
            Shot.write(now, approved);
            return;
        }
        Shot.write(now, NOW.resolve(name + ".png"));
        assertTrue(Files.exists(approved), () -> "no approved picture yet: " + approved);
        double share = differing(ImageIO.read(approved.toFile()), now);
        assertTrue(
                share <= SHARE,
                () -> name + " differs from what was approved in " + 100 * share + " % of its pixels: see " + NOW);
    }

    private static BufferedImage shrunk(BufferedImage image) {
        int width = image.getWidth() / SHRINK;
        int height = image.getHeight() / SHRINK;
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Image scaled = image.getScaledInstance(width, height, Image.SCALE_AREA_AVERAGING);
        small.getGraphics().drawImage(scaled, 0, 0, null);
        return small;
    }

    private static double differing(BufferedImage approved, BufferedImage now) {
        if (approved.getWidth() != now.getWidth() || approved.getHeight() != now.getHeight()) {
            return 1;
        }
        int differing = 0;
        for (int y = 0; y < now.getHeight(); y++) {
            for (int x = 0; x < now.getWidth(); x++) {
                differing += apart(approved.getRGB(x, y), now.getRGB(x, y)) > SHADES ? 1 : 0;
            }
        }
        return differing / (double) (now.getWidth() * now.getHeight());
    }

    private static int apart(int a, int b) {
        int most = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            most = Math.max(most, Math.abs((a >> shift & 255) - (b >> shift & 255)));
        }
        return most;
    }

    private static void english(Theme theme) {
        program.look(theme, "en", UnitSystem.US);
    }

    @Test
    void routeSheetAndGallery() throws Exception {
        program.route();
        english(Theme.LIGHT);
        program.untilPicturesAreDrawn();
        looksAsApproved("route");
        OpenProgram.ROBOT.interact(() -> program.shell().gallery());
        program.settle();
        looksAsApproved("gallery");
        OpenProgram.ROBOT.interact(() -> program.shell().gallery());
    }

    @Test
    void theClinicByDayAndWithSensors() throws Exception {
        SetUp setUp = States.textbook(States.CLINIC);
        YardModel model = program.open(States.CLINIC, setUp);
        english(Theme.LIGHT);
        program.at(model, 12_000);
        looksAsApproved("yard-light");
        english(Theme.DARK);
        looksAsApproved("yard-dark");
        english(Theme.HIGH_CONTRAST);
        looksAsApproved("yard-high-contrast");
        english(Theme.PROJECTOR);
        looksAsApproved("yard-projector");
        english(Theme.LIGHT);
        OpenProgram.ROBOT.interact(() -> model.selectedProperty().set(States.sensor(setUp, SensorKind.FREEZE)));
        program.settle();
        looksAsApproved("inspector-freeze");
        program.look(Theme.LIGHT, "es", UnitSystem.METRIC);
        OpenProgram.ROBOT.interact(() -> model.selectedProperty().set(States.sensor(setUp, SensorKind.FLOW)));
        program.settle();
        looksAsApproved("inspector-flow-es");
    }

    @Test
    void theClinicOnAnIcedMorning() throws Exception {
        YardModel model = program.open(States.CLINIC, States.clockAlone());
        english(Theme.DARK);
        program.at(model, States.icedNight(States.CLINIC, States.clockAlone()));
        looksAsApproved("yard-night-frost");
    }

    @Test
    void placing() throws Exception {
        YardModel model = program.open(States.TANSY_ROW, States.clockAlone());
        english(Theme.LIGHT);
        OpenProgram.ROBOT.interact(() -> model.carry(SensorKind.RAIN, null, new Point(4, 3)));
        program.settle();
        looksAsApproved("placing");
    }
}
