package coldwright.terminal.console;

/** What the program ends with. */
public final class ExitCode {
    /** It did what was asked. */
    public static final int DONE = 0;

    /** It did, and something in a lesson failed. */
    public static final int FAILED = 1;

    /** It did not understand what was asked. */
    public static final int NOT_UNDERSTOOD = 2;

    /** It has a fault of its own. */
    public static final int OWN_FAULT = CrashHandler.EXIT;

    private ExitCode() {}
}
