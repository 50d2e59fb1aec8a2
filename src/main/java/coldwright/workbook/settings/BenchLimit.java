package coldwright.workbook.settings;

/** A limit of the bench. Each is a whole number. */
public enum BenchLimit {
    /** Heap of the bench's process, MB. */
    HEAP_MB("heapMb", 32, 256, 8_192),
    /** Most characters kept of what one run prints. */
    PRINTED_LIMIT("printedLimit", 1_000, 100_000, 10_000_000),
    /** Most figures kept of one run. */
    FIGURE_LIMIT("figureLimit", 1, 20, 1_000),
    /** Most points kept of one figure. */
    POINT_LIMIT("pointLimit", 100, 100_000, 10_000_000),
    /** After how many seconds of a run the window asks whether to go on, s. */
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

    /**
     * Its name in the settings' file.
     *
     * @return such as {@code heapMb}
     */
    public String key() {
        return key;
    }

    /**
     * What it is unless the user says otherwise.
     *
     * @return the usual value
     */
    public int usual() {
        return usual;
    }

    /**
     * The smallest value.
     *
     * @return that value
     */
    public int least() {
        return least;
    }

    /**
     * The largest value.
     *
     * @return that value
     */
    public int most() {
        return most;
    }
}
