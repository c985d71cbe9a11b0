package provingyard.picture;

import provingyard.numeric.RandomStreams;

/** Reproducible chance for what is only drawn: the same name gives the same leaves. */
final class Dice {

    private final long key;
    private long n;

    Dice(String name) {
        this.key = new RandomStreams(0).key(name);
    }

    /** The next number, 0 to 1. */
    double next() {
        return RandomStreams.uniform(key, n++);
    }

    /** The next number between two. */
    double between(double low, double high) {
        return low + (high - low) * next();
    }
}
