package coldwright.figure.wire;

/**
 * The limit on texts in a message, bytes of UTF-8, and the words for its error messages: the
 * subject, such as {@code figure}, and its use, such as {@code shown}.
 */
public record WireLimits(String subject, String use, int mostTextBytes) {
    int checked(String what, int count, int most) throws MalformedWireException {
        if (count < 0) {
            throw new MalformedWireException(
                    "the %s counts %d %s, less than none".formatted(subject, count, what));
        }
        if (count > most) {
            throw new MalformedWireException(
                    "the %s has %d %s; at most %d are %s"
                            .formatted(subject, count, what, most, use));
        }
        return count;
    }
}
