package coldwright.science;

import coldwright.words.Phrase;

import java.util.List;

/** A result with comments: where it leaves the range of its sources, and other limits. */
public interface Commented {
    /** {@return the comments in any language; empty if there are none} */
    List<Phrase> comments();

    /** {@return the comments as English sentences; empty if there are none} */
    default List<String> notes() {
        return Phrase.english(comments());
    }
}
