package provingyard.ui;

import javafx.scene.layout.Region;

/** A reading on its scale: a band where a sound system would read, a diamond where it was read. */
final class CallBand extends Region {

    private static final double DIAMOND = 11;
    private static final double BAND_HEIGHT = 10;
    private static final double LEAST_BAND = 10;

    /** Room beyond the greater of reading and band, as a share. */
    private static final double BEYOND = 1.2;

    private final CallWords.Scale scale;
    private final Region track = new Region();
    private final Region band = new Region();
    private final Region diamond = new Region();

    CallBand(CallWords.Scale scale) {
        this.scale = scale;
        getStyleClass().add("call-band");
        track.getStyleClass().add("scale-track");
        band.getStyleClass().add("call-band-sound");
        diamond.getStyleClass().add(scale.fits() ? "call-band-fits" : "call-band-off");
        diamond.setRotate(45);
        getChildren().addAll(track, band, diamond);
        setMinHeight(16);
        setPrefHeight(16);
    }

    @Override
    protected void layoutChildren() {
        double least = Math.min(0, Math.min(scale.value(), scale.from()));
        double most = BEYOND * Math.max(Math.max(scale.value(), scale.to()), least + 1e-9);
        double w = getWidth() - DIAMOND;
        double y = getHeight() / 2;
        track.resizeRelocate(0, y - 1, getWidth(), 2);
        double from = DIAMOND / 2 + w * (scale.from() - least) / (most - least);
        double to = DIAMOND / 2 + w * (scale.to() - least) / (most - least);
        double wide = Math.max(LEAST_BAND, to - from);
        band.resizeRelocate(Math.max(0, (from + to - wide) / 2), y - BAND_HEIGHT / 2, wide, BAND_HEIGHT);
        double side = DIAMOND / Math.sqrt(2);
        double at = DIAMOND / 2 + w * (scale.value() - least) / (most - least);
        diamond.resizeRelocate(at - side / 2, y - side / 2, side, side);
    }
}
