package provingyard.picture;

/** What may be shown or hidden on the plan. */
public enum Layer {
    PIPES,
    SPRAY,
    WETNESS,
    /** The true shade of this minute's sun; the drawn shadows are a convention. */
    SHADE,
    /** How much of the wind comes through. */
    SHELTER,
    COLD
}
