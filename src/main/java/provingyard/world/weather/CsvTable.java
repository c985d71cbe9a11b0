package provingyard.world.weather;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/** A comma-separated file with a header line; every value is checked where it is read, so no gap becomes a NaN. */
final class CsvTable {

    private final String file;
    private final List<String> header;
    private final List<String[]> rows;
    private final List<Integer> lines;

    private CsvTable(String file, List<String> header, List<String[]> rows, List<Integer> lines) {
        this.file = file;
        this.header = header;
        this.rows = rows;
        this.lines = lines;
    }

    /** Reads the whole file (UTF-8, no quoting, blank lines skipped) and asks for these columns. */
    static CsvTable read(DataFiles files, String file, List<String> columns) {
        if (file == null) {
            throw new WeatherDataException("weather", 0, "the source names no data file");
        }
        try (BufferedReader reader =
                new BufferedReader(new InputStreamReader(files.open(file), StandardCharsets.UTF_8))) {
            return parse(file, reader, columns);
        } catch (IOException e) {
            throw new WeatherDataException(file, 0, "the file cannot be read: " + e.getMessage());
        }
    }

    private static CsvTable parse(String file, BufferedReader reader, List<String> columns) throws IOException {
        String first = reader.readLine();
        if (first == null) {
            throw new WeatherDataException(file, 1, "the file is empty; a header line is expected");
        }
        List<String> header = List.of(first.strip().split(",", -1));
        for (String column : columns) {
            if (!header.contains(column)) {
                throw new WeatherDataException(
                        file, 1, "column '" + column + "' is missing; found " + String.join(", ", header));
            }
        }
        List<String[]> rows = new ArrayList<>();
        List<Integer> lines = new ArrayList<>();
        int line = 1;
        for (String text = reader.readLine(); text != null; text = reader.readLine()) {
            line++;
            if (text.isBlank()) {
                continue;
            }
            String[] cells = text.strip().split(",", -1);
            if (cells.length != header.size()) {
                throw new WeatherDataException(
                        file, line, "has " + cells.length + " values; the header names " + header.size());
            }
            rows.add(cells);
            lines.add(line);
        }
        return new CsvTable(file, header, rows, lines);
    }

    int size() {
        return rows.size();
    }

    String text(int row, String column) {
        return rows.get(row)[header.indexOf(column)].strip();
    }

    /** The finite number in a cell; it must lie between {@code least} and {@code most}. */
    double number(int row, String column, double least, double most) {
        String text = text(row, column);
        double value;
        try {
            value = Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw problem(row, column + " is '" + text + "'; a number is expected");
        }
        if (!(value >= least && value <= most)) {
            throw problem(row, column + " is " + text + "; allowed is " + least + " to " + most);
        }
        return value;
    }

    LocalDate date(int row, String column) {
        String text = text(row, column);
        try {
            // The general parser costs more than all else that is read; most dates are plain.
            boolean plain = text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-';
            return plain ? plainDate(text) : LocalDate.parse(text);
        } catch (DateTimeException | NumberFormatException e) {
            throw problem(row, column + " is '" + text + "'; a date such as 2013-11-05 is expected");
        }
    }

    private static LocalDate plainDate(String text) {
        return LocalDate.of(
                Integer.parseInt(text, 0, 4, 10), Integer.parseInt(text, 5, 7, 10), Integer.parseInt(text, 8, 10, 10));
    }

    LocalDateTime time(int row, String column) {
        try {
            return LocalDateTime.parse(text(row, column));
        } catch (DateTimeException e) {
            throw problem(row, column + " is '" + text(row, column) + "'; a time such as 2013-11-05T06:00 is expected");
        }
    }

    WeatherDataException problem(int row, String what) {
        return new WeatherDataException(file, lines.get(row), what);
    }
}
