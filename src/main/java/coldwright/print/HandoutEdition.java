package coldwright.print;

/** Who a handout is for. */
public enum HandoutEdition {
    /** To read: text, questions, snippets, output and explanations. */
    READER,
    /**
     * To write on: questions with room for answers, no hints, and code only where it is changed.
     */
    BLANK,
    /** For the teacher: everything, with right answers, solutions, checks and notes. */
    ANSWERS,
    /** The figures alone, on one page. */
    FIGURES
}
