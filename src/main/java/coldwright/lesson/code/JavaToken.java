package coldwright.lesson.code;

/**
 * A stretch of Java text that is set in its own colour.
 *
 * @param start where it begins, characters from the text's start
 * @param end where it ends, not included
 * @param kind what it is
 */
public record JavaToken(int start, int end, Kind kind) {
    /** What a stretch of Java is, as far as colour tells. */
    public enum Kind {
        KEYWORD,
        TYPE,
        CONSTANT,
        NUMBER,
        STRING,
        COMMENT,
        DIAL;

        /**
         * The name of its look.
         *
         * @return a style class, such as {@code java-number}
         */
        public String look() {
            return "java-" + name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
