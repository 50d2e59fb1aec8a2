package coldwright.figure.wire;

/**
 * What a message is called when it is refused, and the longest text in it.
 *
 * @param subject such as {@code figure}
 * @param use what is done with its parts, such as {@code shown}
 * @param mostTextBytes longest text, bytes of UTF-8
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
