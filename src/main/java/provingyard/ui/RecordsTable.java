package provingyard.ui;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import provingyard.quantity.Show;
import provingyard.season.LogBook;

/**
 * A page of the controller's records as a table: ready-made texts that sort by what they mean. No control is known here.
 *
 * @param columns names and kinds of the columns
 * @param rows cells, one for each column
 */
record RecordsTable(List<Column> columns, List<Row> rows) {

    /** The pages. */
    enum Page {
        RUNS,
        ZONES,
        NIGHTS,
        NOTES
    }

    /**
     * A column.
     *
     * @param name as its head shows it
     * @param plain as it stands in a file, with the unit of its numbers
     * @param number whether it is set flush right
     * @param width share of the table's width
     */
    record Column(String name, String plain, boolean number, double width) {}

    /**
     * A line.
     *
     * @param tick minute of the season that it tells of, or -1
     */
    record Row(List<Cell> cells, long tick) {}

    /**
     * A cell.
     *
     * @param text as it is shown
     * @param order what it sorts by, NaN to sort by its text
     * @param plain as it stands in a file
     */
    record Cell(String text, double order, String plain) implements Comparable<Cell> {

        static Cell of(String text) {
            return new Cell(text, Double.NaN, text);
        }

        @Override
        public int compareTo(Cell other) {
            boolean numbers = !Double.isNaN(order) && !Double.isNaN(other.order);
            if (numbers) {
                return Double.compare(order, other.order);
            }
            return text.compareTo(other.text);
        }
    }

    /** Makes the pages in the language and the units of now. */
    record Maker(Words words, UnaryOperator<String> name) {

        private static final DateTimeFormatter PLAIN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

        RecordsTable make(Page page, LogBook book) {
            return switch (page) {
                case RUNS -> runs(book);
                case ZONES -> zones(book);
                case NIGHTS -> nights(book);
                case NOTES -> notes(book);
            };
        }

        private RecordsTable runs(LogBook book) {
            List<Row> rows = new ArrayList<>();
            for (LogBook.Run run : book.runs()) {
                rows.add(new Row(
                        List.of(
                                Cell.of(name.apply(run.zone())),
                                time(run.began()),
                                number(run.minutes()),
                                value(Show.FLOW, run.meanFlow()),
                                value(Show.VOLUME, run.volume()),
                                Cell.of(ended(run))),
                        run.tick()));
            }
            List<Column> columns = List.of(
                    text("records.zone", 3),
                    text("records.began", 2.6),
                    numbers("records.minutes", 1.5),
                    flow("records.meanFlow"),
                    volume("records.volume"),
                    text("records.ended", 4));
            return new RecordsTable(columns, rows);
        }

        private RecordsTable zones(LogBook book) {
            List<Row> rows = new ArrayList<>();
            for (LogBook.Zone zone : book.zones()) {
                double share = zone.meanFlow() / zone.expected();
                rows.add(new Row(
                        List.of(
                                Cell.of(name.apply(zone.zone())),
                                number(zone.runs()),
                                number(zone.minutes()),
                                value(Show.VOLUME, zone.volume()),
                                value(Show.FLOW, zone.meanFlow()),
                                value(Show.FLOW, zone.expected()),
                                value(Show.FRACTION, share)),
                        -1));
            }
            List<Column> columns = List.of(
                    text("records.zone", 3),
                    numbers("records.runs", 1.4),
                    numbers("records.minutes", 1.5),
                    volume("records.volume"),
                    flow("records.meanFlow"),
                    flow("records.expected"),
                    share("records.share"));
            return new RecordsTable(columns, rows);
        }

        private RecordsTable nights(LogBook book) {
            List<Row> rows = new ArrayList<>();
            for (LogBook.Night night : book.nights()) {
                LocalDateTime noon = night.evening().atTime(12, 0);
                String day = noon.format(DateTimeFormatter.ofPattern("EEE d MMM", locale()));
                String plain = night.evening().toString();
                rows.add(new Row(
                        List.of(
                                new Cell(day, noon.toEpochSecond(ZoneOffset.UTC), plain),
                                number(night.minutes()),
                                value(Show.VOLUME, night.volume()),
                                value(Show.VOLUME, night.idleVolume()),
                                value(Show.FLOW, night.largest())),
                        -1));
            }
            List<Column> columns = List.of(
                    text("records.evening", 2),
                    numbers("records.minutes", 1.5),
                    volume("records.watered"),
                    volume("records.idle"),
                    flow("records.largest"));
            return new RecordsTable(columns, rows);
        }

        private RecordsTable notes(LogBook book) {
            List<Row> rows = new ArrayList<>();
            for (LogBook.Note note : book.notes()) {
                rows.add(new Row(
                        List.of(
                                time(note.at()),
                                Cell.of(subject(note.subject())),
                                Cell.of(words.say("event." + note.kind().name())),
                                Cell.of(cause(note))),
                        note.tick()));
            }
            List<Column> columns = List.of(
                    text("records.time", 2),
                    text("records.subject", 2.4),
                    text("records.what", 3),
                    text("records.cause", 4));
            return new RecordsTable(columns, rows);
        }

        private Column text(String key, double width) {
            return new Column(words.say(key), words.say(key), false, width);
        }

        private Column numbers(String key, double width) {
            return new Column(words.say(key), words.say(key), true, width);
        }

        private Column share(String key) {
            return measured(key, Show.FRACTION);
        }

        private Column flow(String key) {
            return measured(key, Show.FLOW);
        }

        private Column volume(String key) {
            return measured(key, Show.VOLUME);
        }

        private Column measured(String key, Show show) {
            String name = words.say(key);
            return new Column(
                    name, words.say("records.measured", name, words.display().unit(show)), true, 2);
        }

        private Cell time(LocalDateTime at) {
            String text = at.format(DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", locale()));
            return new Cell(text, at.toEpochSecond(ZoneOffset.UTC), at.format(PLAIN));
        }

        private static Cell number(int n) {
            return new Cell(Integer.toString(n), n, Integer.toString(n));
        }

        private Cell value(Show show, double inner) {
            if (!Double.isFinite(inner)) {
                return new Cell("–", Double.NEGATIVE_INFINITY, "");
            }
            String plain = String.format(Locale.ROOT, "%.4g", words.display().shown(show, inner));
            return new Cell(words.display().text(show, inner), inner, Double.toString(Double.parseDouble(plain)));
        }

        private String ended(LogBook.Run run) {
            return words.say("end." + run.ended().name(), run.by().isEmpty() ? "" : subject(run.by()));
        }

        private String subject(String id) {
            return "master".equals(id) ? words.say("records.master") : name.apply(id);
        }

        private String cause(LogBook.Note note) {
            return switch (note.kind()) {
                case SENSOR_TRIPPED, SENSOR_REARMED -> shown(note);
                case FLOW_HIGH, FLOW_LOW ->
                    words.say("cause.against", flowText(note, "flow"), flowText(note, "expected"));
                case FLOW_UNSCHEDULED -> words.say("cause.over", flowText(note, "flow"), flowText(note, "limit"));
                case EXPECTED_RECORDED -> flowText(note, "flow");
                default -> why(note.cause());
            };
        }

        private String shown(LogBook.Note note) {
            double shown = note.values().getOrDefault("shown", Double.NaN);
            return note.sensor() == null
                    ? ""
                    : words.say("cause.read", words.display().text(Readouts.of(note.sensor()), shown));
        }

        private String flowText(LogBook.Note note, String name) {
            return words.display().text(Show.FLOW, note.values().getOrDefault(name, Double.NaN));
        }

        private String why(String cause) {
            return switch (cause) {
                case "" -> "";
                case "window", "lock-out", "master", "flow", "set-up", "held", "by-hand" -> words.say("cause." + cause);
                default -> subject(cause);
            };
        }

        private Locale locale() {
            return words.language().equals("es") ? Locale.forLanguageTag("es") : Locale.ENGLISH;
        }
    }

    /** The table as comma-separated values (RFC 4180), numbers with a decimal point in the units of the heads. */
    String csv() {
        StringBuilder text = new StringBuilder();
        line(text, columns.stream().map(Column::plain).toList());
        for (Row row : rows) {
            line(text, row.cells().stream().map(Cell::plain).toList());
        }
        return text.toString();
    }

    private static void line(StringBuilder text, List<String> fields) {
        for (int i = 0; i < fields.size(); i++) {
            String field = fields.get(i);
            boolean quoted = field.matches("(?s).*[,\"\\r\\n].*");
            text.append(i == 0 ? "" : ",").append(quoted ? '"' + field.replace("\"", "\"\"") + '"' : field);
        }
        text.append("\r\n");
    }
}
