package coldwright.terminal;

/** What the program ends with. */
final class Exit {
    /** It did what was asked. */
    static final int DONE = 0;

    /** It did, and something in a lesson failed. */
    static final int FAILED = 1;

    /** It did not understand what was asked. */
    static final int NOT_UNDERSTOOD = 2;

    /** It has a fault of its own. */
    static final int OWN_FAULT = LastResort.EXIT;

    private Exit() {}
}
