package provingyard.diagnosis;

/**
 * What one test would read under each hypothesis, in their order. Where it comes from (a simulator, a table) is not
 * this package's concern.
 */
public sealed interface Prediction permits NumericPrediction, CategoryPrediction {

    /** Number of hypotheses. */
    int size();

    /** Natural logarithm of the likelihood of a reading under a hypothesis. */
    double logLikelihood(int hypothesis, Reading reading, Trust trust);
}
