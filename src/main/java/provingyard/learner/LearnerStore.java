package provingyard.learner;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The learners of this machine, one file each, in the folder {@code learners} of the data folder. A file is replaced
 * whole or not at all. A broken one is renamed and kept as it is; one from a newer program is left as it is.
 */
public final class LearnerStore {

    private static final String ENDING = ".json";
    private static final String LAST = "last-learner.txt";

    /**
     * Something that the user should hear once.
     *
     * @param kind what it is
     * @param file the file that it is about, where it lies now
     */
    public record Trouble(Kind kind, Path file) {

        /** Kinds of trouble. */
        public enum Kind {
            /** It is no learner's file; it was put aside. */
            BROKEN,
            /** A newer program wrote it; it was left alone. */
            NEWER,
            /** It could not be read; it was left alone. */
            NOT_READ,
            /** It could not be written; what it held before is still there. */
            NOT_WRITTEN
        }
    }

    /** What was found: learners by id, and what the user should hear. */
    public record Found(List<Learner> learners, List<Trouble> troubles) {}

    private final Path folder;

    /** A store in a data folder, which is made when something is first written. */
    public LearnerStore(Path dataFolder) {
        folder = dataFolder.resolve("learners");
    }

    /** Where the files are. */
    public Path folder() {
        return folder;
    }

    /** Reads all learners, and puts broken files aside. */
    public Found all() {
        List<Learner> learners = new ArrayList<>();
        List<Trouble> troubles = new ArrayList<>();
        for (Path file : files()) {
            read(file, learners, troubles);
        }
        return new Found(List.copyOf(learners), List.copyOf(troubles));
    }

    private void read(Path file, List<Learner> learners, List<Trouble> troubles) {
        String name = file.getFileName().toString();
        String id = name.substring(0, name.length() - ENDING.length());
        try {
            LearnerFile.Read read = LearnerFile.read(id, Files.readString(file));
            if (read.learner() != null) {
                learners.add(read.learner());
            } else if (read.fault() == LearnerFile.Fault.NEWER) {
                troubles.add(new Trouble(Trouble.Kind.NEWER, file));
            } else {
                troubles.add(new Trouble(Trouble.Kind.BROKEN, aside(file)));
            }
        } catch (CharacterCodingException e) {
            troubles.add(new Trouble(Trouble.Kind.BROKEN, aside(file)));
        } catch (IOException e) {
            troubles.add(new Trouble(Trouble.Kind.NOT_READ, file));
        }
    }

    /** Renames a broken file; gives where it lies now. */
    private Path aside(Path file) {
        String name = file.getFileName() + ".broken";
        Path to = file.resolveSibling(name);
        for (int i = 2; Files.exists(to); i++) {
            to = file.resolveSibling(name + "-" + i);
        }
        try {
            return Files.move(file, to);
        } catch (IOException e) {
            // It stays where it is: nothing is lost, and no learner is written over it.
            return file;
        }
    }

    private List<Path> files() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    /** A name for a new learner's file that no file has yet, whether it could be read or not. */
    public String freeId() {
        List<String> names = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.forEach(f -> names.add(f.getFileName().toString()));
            } catch (IOException e) {
                names.clear();
            }
        }
        int number = 1;
        while (taken(names, "learner-" + number)) {
            number++;
        }
        return "learner-" + number;
    }

    private static boolean taken(List<String> names, String id) {
        return names.stream().anyMatch(n -> n.startsWith(id + "."));
    }

    /** Writes a learner's file whole; a file that was there is replaced only when the new one is safe on the disk. */
    public Optional<Trouble> save(Learner learner) {
        Path file = file(learner.id());
        try {
            write(file, LearnerFile.write(learner));
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(new Trouble(Trouble.Kind.NOT_WRITTEN, file));
        }
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Path fresh = file.resolveSibling(file.getFileName() + ".new");
        Files.writeString(fresh, text, StandardCharsets.UTF_8);
        try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
        try {
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Takes a learner's file away. */
    public Optional<Trouble> remove(String id) {
        try {
            Files.deleteIfExists(file(id));
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(new Trouble(Trouble.Kind.NOT_WRITTEN, file(id)));
        }
    }

    /** Id of the learner who was here last; empty when nobody was. */
    public String last() {
        try {
            return Files.readString(folder.resolve(LAST)).strip();
        } catch (IOException e) {
            return "";
        }
    }

    /** Remembers who was here last; where that cannot be written, the first one is taken next time. */
    public void remember(String id) {
        try {
            write(folder.resolve(LAST), id + "\n");
        } catch (IOException e) {
            // Not worth a word: learners can be chosen by hand.
            return;
        }
    }

    private Path file(String id) {
        return folder.resolve(id + ENDING);
    }
}
