package coldwright.desk.model;

import java.util.concurrent.CompletionException;

/** What an exception that nobody foresaw has to say. */
final class Trouble {
    private Trouble() {}

    /** Its message without the wrappings of other threads. */
    static String said(Throwable trouble) {
        Throwable cause = trouble;
        while (cause instanceof CompletionException && cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }
}
