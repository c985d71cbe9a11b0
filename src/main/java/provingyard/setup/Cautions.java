package provingyard.setup;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import provingyard.scenario.SensorKind;

/** Cautions where work can hurt: which ones belong to fitting a sensor, and their texts. */
public final class Cautions {

    /** A ladder is needed. */
    public static final String LADDER = "ladder";
    /** Buried lines are located before anybody digs. */
    public static final String BURIED_LINES = "buried-lines";
    /** Pressure off before a pipe is cut. */
    public static final String PRESSURE_OFF = "pressure-off";
    /** Backflow preventers are for licensed people. */
    public static final String BACKFLOW = "backflow";
    /** Low-voltage side only. */
    public static final String LOW_VOLTAGE = "low-voltage";
    /** Ice underfoot. */
    public static final String ICE = "ice";
    /** A freeze sensor neither winterises nor protects pipes. */
    public static final String NOT_WINTERISED = "not-winterised";
    /** Local codes and licensed practice decide. */
    public static final String CODES = "codes";

    /** All cautions, in the order in which they are shown. */
    public static final List<String> ALL =
            List.of(LADDER, BURIED_LINES, PRESSURE_OFF, BACKFLOW, LOW_VOLTAGE, ICE, NOT_WINTERISED, CODES);

    private static final Properties ENGLISH = load("en");
    private static final Properties SPANISH = load("es");

    private Cautions() {}

    /**
     * Cautions for fitting a sensor.
     *
     * @param kind its kind
     * @param mount what it is fixed to; null for flow and soil sensors
     */
    public static List<String> of(SensorKind kind, Mount mount) {
        List<String> keys = new ArrayList<>();
        if (mount == Mount.WALL || mount == Mount.ROOF_EDGE || mount == Mount.BRANCH) {
            keys.add(LADDER);
        }
        if (mount == Mount.POST || kind == SensorKind.SOIL || kind == SensorKind.FLOW) {
            keys.add(BURIED_LINES);
        }
        if (kind == SensorKind.FLOW) {
            keys.add(PRESSURE_OFF);
            keys.add(BACKFLOW);
        }
        keys.add(LOW_VOLTAGE);
        if (kind == SensorKind.FREEZE) {
            keys.add(ICE);
            keys.add(NOT_WINTERISED);
        }
        keys.add(CODES);
        return List.copyOf(keys);
    }

    /** Cautions for a placement. */
    public static List<String> of(Placement placement) {
        Mount mount = null;
        if (placement instanceof Placement.Rain rain) {
            mount = rain.mount();
        } else if (placement instanceof Placement.Wind wind) {
            mount = wind.mount();
        } else if (placement instanceof Placement.Freeze freeze) {
            mount = freeze.mount();
        }
        return of(placement.kind(), mount);
    }

    /**
     * A caution's sentence in {@code "en"} or {@code "es"}.
     *
     * @throws IllegalArgumentException when there is no such caution
     */
    public static String text(String key, String language) {
        String text = ("es".equals(language) ? SPANISH : ENGLISH).getProperty(key);
        if (text == null) {
            throw new IllegalArgumentException("no caution " + key);
        }
        return text;
    }

    private static Properties load(String language) {
        String path = "/provingyard/setup/cautions_" + language + ".properties";
        try (InputStream in = Cautions.class.getResourceAsStream(path)) {
            Properties texts = new Properties();
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
