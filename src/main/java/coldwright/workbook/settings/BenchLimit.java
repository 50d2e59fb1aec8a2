package coldwright.workbook.settings;

/** A limit of the bench, a whole number. */
public enum BenchLimit {
    /** Heap of the bench's process, MB. */
    HEAP_MB("heapMb", 32, 256, 8_192),
    /** Maximum number of saved characters that one run prints. */
    PRINTED_LIMIT("printedLimit", 1_000, 100_000, 10_000_000),
    /** Maximum number of saved figures of one run. */
    FIGURE_LIMIT("figureLimit", 1, 20, 1_000),
    /** Maximum number of saved points of one figure. */
    POINT_LIMIT("pointLimit", 100, 100_000, 10_000_000),
    /** Run time after which the window asks whether to continue, s. */
    ASK_AFTER_SECONDS("askAfterSeconds", 1, 10, 3_600);

    private final String key;
    private final int least;
    private final int usual;
    private final int most;

    BenchLimit(String key, int least, int usual, int most) {
        this.key = key;
        this.least = least;
        this.usual = usual;
        this.most = most;
    }

    /** Its name in the settings file, such as {@code heapMb}. */
    public String key() {
        return key;
    }

    /** The default value. */
    public int usual() {
        return usual;
    }

    public int least() {
        return least;
    }

    public int most() {
        return most;
    }
}
