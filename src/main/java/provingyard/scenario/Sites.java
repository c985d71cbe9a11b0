package provingyard.scenario;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;

/** Finds sites and resources. */
public final class Sites {

    private Sites() {}

    /** A resource of the program, such as {@code shared/reference/catalogue.json}. */
    public static InputStream resource(String path) throws IOException {
        InputStream in = Sites.class.getResourceAsStream("/" + path);
        if (in == null) {
            throw new FileNotFoundException(path);
        }
        return in;
    }
}
