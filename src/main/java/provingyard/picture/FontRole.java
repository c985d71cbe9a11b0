package provingyard.picture;

/** The faces that the program uses. */
public enum FontRole {
    /** Sans, 400: running text. */
    TEXT("SourceSans3_400Regular.ttf"),
    /** Sans, 600: labels, buttons. */
    STRONG("SourceSans3_600SemiBold.ttf"),
    /** Sans, 700: values. */
    BOLD("SourceSans3_700Bold.ttf"),
    /** Serif, 600: titles, site names, the score. */
    TITLE("SourceSerif4_600SemiBold.ttf"),
    /** Fixed width, 400: documents. */
    CODE("SourceCodePro_400Regular.ttf");

    private final String file;

    FontRole(String file) {
        this.file = file;
    }

    /** The font's file, below {@code assets/fonts/}. */
    public String file() {
        return file;
    }
}
