package provingyard.world.weather;

/**
 * What is wrong with a weather data file.
 *
 * @param file path below the shared reference folder
 * @param line line in the file, 1 is the first; 0 where no line is to blame
 * @param what what was found and what is expected
 */
public record WeatherDataProblem(String file, int line, String what) {

    /** One line for people: {@code file:line: what}. */
    public String message() {
        return line > 0 ? file + ":" + line + ": " + what : file + ": " + what;
    }
}
