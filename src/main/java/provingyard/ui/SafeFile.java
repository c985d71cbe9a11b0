package provingyard.ui;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all: what stood there before stays until the new text is complete. */
final class SafeFile {

    private SafeFile() {}

    /** Writes a text in UTF-8. */
    static void write(Path file, String text) throws IOException {
        Path target = file.toAbsolutePath();
        Path fresh = Files.createTempFile(target.getParent(), "." + target.getFileName(), ".new");
        try {
            Files.writeString(fresh, text, StandardCharsets.UTF_8);
            move(fresh, target);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    private static void move(Path fresh, Path target) throws IOException {
        try {
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
