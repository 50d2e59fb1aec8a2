package coldwright.figure.wire;

import java.io.IOException;

/** A message exceeds a limit or is of an unknown kind. */
public final class MalformedWireException extends IOException {
    private static final long serialVersionUID = 1;

    /** Creates the exception with a one-sentence message. */
    public MalformedWireException(String message) {
        super(message);
    }
}
