package provingyard.world.weather;

import java.io.IOException;
import java.io.InputStream;

/** Opens the weather's data files, so that the weather needs to know no file system and no class path. */
@FunctionalInterface
public interface DataFiles {

    /**
     * Opens a data file.
     *
     * @param pathBelowSharedReference for example {@code weather-soil/diurnal-shape.json}
     * @return a stream the caller closes
     * @throws IOException if there is no such file or it cannot be read
     */
    InputStream open(String pathBelowSharedReference) throws IOException;
}
