package provingyard.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import provingyard.scenario.LocatedJson;
import provingyard.text.Texts;

/** Reads text files that a command names, and says in plain words why a file cannot be read or written. */
final class TextFile {

    /** No document may be longer in characters, and a character takes at most four bytes. */
    private static final int MOST_BYTES = 4 * LocatedJson.LONGEST + 1;

    private TextFile() {}

    /**
     * The text of a file in UTF-8; of one that is longer than any document may be, its beginning.
     *
     * @throws IOException when it cannot be read or is not UTF-8; {@link #reason} says why
     */
    static String read(Path file) throws IOException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES);
        }
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes))
                .toString();
    }

    /** Why a file could not be read or written. */
    static String reason(IOException failure, Texts texts) {
        if (failure instanceof NoSuchFileException) {
            return texts.say("file.missing");
        }
        if (failure instanceof AccessDeniedException) {
            return texts.say("file.denied");
        }
        if (failure instanceof FileAlreadyExistsException) {
            return texts.say("file.inTheWay");
        }
        if (failure instanceof CharacterCodingException) {
            return texts.say("file.notUtf8");
        }
        String system = failure instanceof FileSystemException named ? named.getReason() : failure.getMessage();
        return system == null ? texts.say("file.other") : system;
    }
}
