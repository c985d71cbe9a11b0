package provingyard.world.weather;

/** Thrown when no series can be made because a data file is missing, broken or too short; carries the problem. */
public final class WeatherDataException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient WeatherDataProblem problem;

    /** A series cannot be made because of this. */
    public WeatherDataException(WeatherDataProblem problem) {
        super(problem.message());
        this.problem = problem;
    }

    WeatherDataException(String file, int line, String what) {
        this(new WeatherDataProblem(file, line, what));
    }

    /** The problem, to be shown with its file and line. */
    public WeatherDataProblem problem() {
        return problem;
    }
}
