package coldwright.desk.run;

import coldwright.desk.messages.Messages;
import coldwright.text.WholeFile;

import java.util.concurrent.CompletionException;

/** Texts of unexpected exceptions. */
public final class ExceptionText {
    private ExceptionText() {}

    /**
     * The message of an exception, without the wrappers of other threads; its class if it has none.
     */
    public static String text(Throwable error) {
        Throwable cause = error;
        while (cause instanceof CompletionException && cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }

    /** An error sentence on a file that was not written, with the reason and the fix. */
    public static String unwritten(Object file, WholeFile.UnwrittenException error) {
        return Messages.of("unwritten", file, why(error));
    }

    /** The reason why a file was not written and the fix, as half a sentence. */
    public static String why(WholeFile.UnwrittenException error) {
        return Messages.of("unwritten." + error.reason());
    }
}
