package coldwright.desk;

/** There is no screen to open a window on; the message gives the reason in one sentence. */
public final class NoDisplayException extends Exception {
    private static final long serialVersionUID = 1;

    NoDisplayException(String message, Throwable cause) {
        super(message, cause);
    }
}
