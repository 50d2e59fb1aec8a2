package coldwright.terminal.console;

/** Exit codes of the commands. */
public final class ExitCode {
    /** The command succeeded. */
    public static final int DONE = 0;

    /** The command succeeded, but something in a lesson failed. */
    public static final int FAILED = 1;

    /** The command was not understood. */
    public static final int NOT_UNDERSTOOD = 2;

    /** A fault of the program. */
    public static final int OWN_FAULT = CrashHandler.EXIT;

    private ExitCode() {}
}
