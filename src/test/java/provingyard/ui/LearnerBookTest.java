package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import provingyard.learner.Learner;
import provingyard.learner.LearnerStore;
import provingyard.learner.LearnerStore.Trouble;
import provingyard.learner.Look;

class LearnerBookTest {

    private static final Look LOOK = Look.first("en", "US");

    @TempDir
    Path folder;

    private LearnerBook book() {
        return new LearnerBook(new LearnerStore(folder), LOOK);
    }

    @Test
    void nobodyIsAskedAndNothingIsWrittenBeforeSomethingHappens() {
        try (LearnerBook book = book()) {
            assertTrue(book.isNew());
            assertEquals("", book.current().name());
        }
        assertFalse(Files.exists(folder.resolve("learners")));
    }

    @Test
    void whatIsChangedIsThereTheNextTime() {
        try (LearnerBook book = book()) {
            book.change(l -> l.on("tansy-row", p -> p.lived(92)));
            book.add("Ben");
            book.change(l -> l.looking(l.look().theme("dark")));
            book.change("learner-1", l -> l.named("Ana"));
        }
        try (LearnerBook book = book()) {
            assertEquals(
                    List.of("Ana", "Ben"),
                    book.all().stream().map(Learner::name).toList());
            assertEquals("Ben", book.current().name(), "who was here last is here again");
            assertTrue(book.isNew());
            book.switchTo("learner-1");
            assertEquals(92, book.current().at("tansy-row").best());
            assertEquals("light", book.current().look().theme());
            assertFalse(book.isNew());
        }
        try (LearnerBook book = book()) {
            assertEquals("Ana", book.current().name());
            book.remove("learner-1");
            assertEquals("Ben", book.current().name());
            book.remove("learner-2");
            assertEquals("", book.current().name(), "somebody is always here");
        }
        assertEquals(List.of(), new LearnerStore(folder).all().learners());
    }

    @Test
    void aFileThatCannotBeWrittenIsToldOnceAndAgainOnlyAfterItWentWell() throws IOException {
        List<Trouble.Kind> told = Collections.synchronizedList(new ArrayList<>());
        Path inTheWay = folder.resolve("learners").resolve("learner-1.json.new");
        Files.createDirectories(inTheWay);
        try (LearnerBook book = book()) {
            // The folder in the way takes the first number, so the book must be told whose file it is.
            String id = book.current().id();
            Path way = folder.resolve("learners").resolve(id + ".json.new");
            Files.createDirectories(way);
            book.onTrouble(t -> told.add(t.kind()));
            book.change(l -> l.named("Ana"));
            book.change(l -> l.named("Anna"));
            assertFalse(book.flush());
            assertTrue(book.lost());
            assertEquals(List.of(Trouble.Kind.NOT_WRITTEN), told);
            Files.delete(way);
            assertTrue(book.flush(), "it is tried again");
            assertFalse(book.lost());
            Files.createDirectories(way);
            book.change(l -> l.named("Anne"));
            assertFalse(book.flush());
            assertEquals(2, told.size());
            Files.delete(way);
        }
    }

    @Test
    void brokenFilesAreToldAndNotWrittenOver() throws IOException {
        Path file = folder.resolve("learners").resolve("learner-1.json");
        Files.createDirectories(file.getParent());
        Files.writeString(file, "{");
        try (LearnerBook book = book()) {
            assertEquals(1, book.takeTroubles().size());
            assertEquals(List.of(), book.takeTroubles());
            assertEquals("learner-2", book.current().id());
            book.change(l -> l.named("Ana"));
        }
        assertEquals("{", Files.readString(file.resolveSibling("learner-1.json.broken")));
    }

    @Test
    void aBookOfNobodyWritesNothing() {
        try (LearnerBook book = LearnerBook.unwritten()) {
            book.change(l -> l.named("Ana"));
            book.add("Ben");
            assertEquals("Ben", book.current().name());
            assertFalse(book.guided());
            assertTrue(book.flush());
        }
    }
}
