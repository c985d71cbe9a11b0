package provingyard.study;

import java.util.List;
import provingyard.scenario.SensorKind;

/** What can be chosen about one kind of sensor. Usual values are common practice, no source. */
interface Options {

    /** The kind. */
    SensorKind kind();

    /** A sensor with usual settings at each place that is worth a look. */
    List<Fitting> places();

    /** A fitting with each of the usual settings. */
    List<Fitting> settings(Fitting fitting);

    /** A fitting with one thing switched: an action, a height, a time. */
    List<Fitting> switches(Fitting fitting);

    /** The settings of a fitting that can be turned. */
    List<Dial<Fitting>> dials(Fitting fitting);
}
