package provingyard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is typed wrongly: exit 2, plain words in the language asked for, nothing on standard output, no trace. */
class BadInputTest {

    @TempDir
    Path folder;

    private static Shell bad(String line) {
        Shell shell = Shell.type(line.split(" "));
        assertEquals(Main.BAD_INPUT, shell.code(), line + "\n" + shell.seen());
        assertEquals("", shell.out(), line);
        assertFalse(shell.err().isBlank(), line);
        assertFalse(shell.err().contains("Exception") || shell.err().contains("\tat "), shell.err());
        assertFalse(shell.err().contains("[["), shell.err());
        return shell;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "run nowhere|Known sites: tansy-row|Sitios conocidos: tansy-row",
                "run tansy-row --days 0|from 1 to 366; found 0|de 1 a 366; se halló 0",
                "run tansy-row --days 367|found 367|se halló 367",
                "run tansy-row --days two|\"two\" does not fit --days|\"two\" no sirve para --days",
                "run tansy-row --days|Missing: --days|Falta: --days",
                "run|Missing: SITE|Falta: SITE",
                "run tansy-row --frob|Not understood: --frob|No se entiende: --frob",
                "run tansy-row --seed 1 --seed 2|Given twice: --seed|Dado dos veces: --seed",
                "run tansy-row --seed 1.5|\"1.5\" does not fit --seed|\"1.5\" no sirve para --seed",
                "run tansy-row --setup none.json|no set-up file \"none.json\"|configuración \"none.json\"",
                "run tansy-row --units imperial|\"imperial\" are not known|las unidades \"imperial\"",
                "shares nowhere|Known sites: tansy-row|Sitios conocidos: tansy-row",
                "shares tansy-row --setup none.json|no set-up file \"none.json\"|configuración \"none.json\"",
                "worth nowhere|Known sites: tansy-row|Sitios conocidos: tansy-row",
                "worth tansy-row --setup none.json|no set-up file \"none.json\"|configuración \"none.json\"",
                "worth tansy-row --draws 1|from 2 to 1000; found 1|de 2 a 1000; se halló 1",
                "worth tansy-row --draws 1001|found 1001|se halló 1001",
                "worth tansy-row --draws few|\"few\" does not fit --draws|\"few\" no sirve para --draws",
                "frob|Not understood: frob|No se entiende: frob",
                "check|Missing: FILE|Falta: FILE",
                "check none.json|there is no such file|no existe ese archivo",
                "network none.json|there is no such file|no existe ese archivo",
                "picture tansy-row|Missing: --out|Falta: --out",
                "picture tansy-row --out x.png --size big|found \"big\"|se halló \"big\"",
                "picture tansy-row --out x.png --size 63x64|from 64 to 8000|de 64 a 8000",
                "picture tansy-row --out x.png --theme pink|\"pink\" is not known|el tema \"pink\"",
                "picture tansy-row --out x.png --minute -1|found -1|se halló -1",
                "picture tansy-row --out x.png --minute 64801|from 0 to 64800|de 0 a 64800",
                "picture tansy-row --out no-folder/x.png|no such file or folder|no existe ese archivo o carpeta",
            })
    void isAnsweredInBothLanguages(String line, String english, String spanish) {
        Shell en = bad(line);
        assertTrue(en.err().contains(english), en.err());
        Shell es = bad(line + " --lang es");
        assertTrue(es.err().contains(spanish), es.err());
    }

    @Test
    void aLanguageThatIsNotKnownIsSaid() {
        assertTrue(bad("run tansy-row --lang fr").err().contains("Allowed: en, es"));
        assertTrue(bad("--lang=fr").err().contains("Allowed: en, es"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "run", "run tansy-row --days 1 --setup"})
    void brokenJsonIsLocated(String command) throws IOException {
        Path file = Files.writeString(folder.resolve("broken.json"), "{\n  \"level\": 3,\n}\n");
        for (String language : List.of("en", "es")) {
            List<String> words = new ArrayList<>(List.of(command.split(" ")));
            words.addAll(List.of(file.toString(), "--lang", language));
            Shell shell = Shell.type(words.toArray(String[]::new));
            assertEquals(Main.BAD_INPUT, shell.code(), shell.seen());
            assertTrue(shell.seen().contains(file + ":3:1: SYN-COMMA"), shell.seen());
            assertTrue(shell.seen().contains(language.equals("en") ? "comma" : "coma"), shell.seen());
        }
    }

    @Test
    void filesThatAreNotTextAreSaidPlainly() throws IOException {
        Path file = Files.write(folder.resolve("bytes.json"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        for (String command : List.of("check ", "network ", "run tansy-row --days 1 --setup ")) {
            assertTrue(bad(command + file).err().contains("not text in UTF-8"), command);
        }
        assertTrue(bad("check " + folder).err().contains(folder.toString()));
    }

    @Test
    void brokenNetworksAreSaid() throws IOException {
        Path broken = Files.writeString(folder.resolve("n.json"), "{\n\"a\":}\n");
        assertTrue(bad("network " + broken).err().contains("line 2, column 5"));
        Path empty = Files.writeString(folder.resolve("e.json"), "{\"friction\": \"XX\"}");
        assertTrue(bad("network " + empty).err().contains("HW or DW"));
    }
}
