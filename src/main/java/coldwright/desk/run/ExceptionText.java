package coldwright.desk.run;

import coldwright.desk.messages.Messages;
import coldwright.text.WholeFile;

import java.util.concurrent.CompletionException;

/** What an exception that nobody foresaw has to say. */
public final class ExceptionText {
    private ExceptionText() {}

    /**
     * What it has to say.
     *
     * @param trouble any exception
     * @return its message without the wrappings of other threads; its kind if it has none
     */
    public static String text(Throwable trouble) {
        Throwable cause = trouble;
        while (cause instanceof CompletionException && cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }

    /**
     * That a file was not written.
     *
     * @param file its name, as the learner knows it
     * @param trouble what went wrong
     * @return a sentence with the reason and its mend
     */
    public static String unwritten(Object file, WholeFile.UnwrittenException trouble) {
        return Messages.of("unwritten", file, why(trouble));
    }

    /**
     * Why a file was not written.
     *
     * @param trouble what went wrong
     * @return the reason and its mend, half a sentence
     */
    public static String why(WholeFile.UnwrittenException trouble) {
        return Messages.of("unwritten." + trouble.reason());
    }
}
