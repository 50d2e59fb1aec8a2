package coldwright.desk.model;

import java.util.concurrent.CompletionException;

/** What an exception that nobody foresaw has to say. */
public final class Trouble {
    private Trouble() {}

    /**
     * What it has to say.
     *
     * @param trouble any exception
     * @return its message without the wrappings of other threads; its kind if it has none
     */
    public static String said(Throwable trouble) {
        Throwable cause = trouble;
        while (cause instanceof CompletionException && cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }
}
