package provingyard.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DataFolderTest {

    @TempDir
    Path there;

    @Test
    void aNamedFolderWinsThenThePortableOneThenTheHome() throws IOException {
        Path beside = Files.createDirectories(there.resolve("program"));
        Path home = there.resolve("home");
        assertEquals(home.resolve(".proving-yard"), DataFolder.choose(null, beside, home));
        assertEquals(home.resolve(".proving-yard"), DataFolder.choose(" ", null, home));
        Path portable = Files.createDirectories(beside.resolve(DataFolder.PORTABLE));
        assertEquals(portable, DataFolder.choose(null, beside, home));
        assertEquals(
                there.resolve("named"), DataFolder.choose(there.resolve("named").toString(), beside, home));
    }

    @Test
    void aPortableFolderThatIsAFileDoesNotCount() throws IOException {
        Path beside = Files.createDirectories(there.resolve("program"));
        Files.writeString(beside.resolve(DataFolder.PORTABLE), "");
        assertEquals(there.resolve(".proving-yard"), DataFolder.choose(null, beside, there));
    }
}
