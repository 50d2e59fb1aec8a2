package coldwright.print;

/** For whom a handout is. */
public enum HandoutEdition {
    /** To read: text, questions, snippets, what they gave, and why. */
    READER,
    /** To write on: questions with room for answers, and nothing that gives them away. */
    BLANK,
    /** For the teacher: all of it, with right answers, solutions, checks and notes. */
    ANSWERS
}
