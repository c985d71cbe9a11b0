package provingyard.call;

/** What a technician takes in hand; each has its own place in the tray, its own sign and its own key. */
public enum Tool {
    /** The meter at the point of connection, watched. */
    METER,
    /** The handles of isolation valves and of the shut-off at the point of connection. */
    ISOLATE,
    /** Running a zone from the controller, and by hand at its valve. */
    RUN_ZONE,
    /** A pressure gauge. */
    GAUGE,
    /** A multimeter and a clamp, low-voltage side only. */
    MULTIMETER,
    /** What the controller remembers and how it is set. */
    RECORDS,
    /** Eyes, on a walk. */
    LOOK,
    /** A listening rod or ground microphone. */
    LISTEN,
    /** A soil probe. */
    PROBE,
    /** A spade. */
    DIG,
    /** What sensors are checked with: water, thermometer, soil core, a spun cup. */
    SENSOR_CHECK,
    /** Requests to others: lines to be marked, a licensed tester. */
    REQUEST,
    /** The hand that opens again what it shut. */
    PUT_BACK
}
