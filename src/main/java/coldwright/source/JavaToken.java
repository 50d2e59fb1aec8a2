package coldwright.source;

/**
 * A token of Java text.
 *
 * @param kind its kind
 * @param start where it begins, characters from the text's start
 * @param end where it ends, exclusive
 */
public record JavaToken(Kind kind, int start, int end) {
    /** The kinds of tokens. */
    public enum Kind {
        WHITESPACE,
        LINE_COMMENT,
        BLOCK_COMMENT,
        STRING,
        TEXT_BLOCK,
        CHARACTER,
        NUMBER,
        /** A name or a keyword. */
        WORD,
        /** An opening bracket: round, square or curly. */
        OPEN,
        /** A closing bracket. */
        CLOSE,
        /** Any other symbol of Java, and each character that isn't valid in Java. */
        OPERATOR
    }

    /** Whether it is a comment of either kind. */
    public boolean isComment() {
        return kind == Kind.LINE_COMMENT || kind == Kind.BLOCK_COMMENT;
    }

    /** Whether it is quoted: a string, a text block or a character. */
    public boolean isQuoted() {
        return kind == Kind.STRING || kind == Kind.TEXT_BLOCK || kind == Kind.CHARACTER;
    }

    /** Whether the compiler sees it: neither whitespace nor a comment. */
    public boolean isCode() {
        return kind != Kind.WHITESPACE && !isComment();
    }
}
