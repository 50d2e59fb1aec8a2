package coldwright.figure.wire;

import java.io.IOException;

/** What came, or was to be sent, is outside the limits or of no known kind. */
public final class MalformedWireException extends IOException {
    private static final long serialVersionUID = 1;

    /** Says in one sentence what is wrong. */
    public MalformedWireException(String message) {
        super(message);
    }
}
