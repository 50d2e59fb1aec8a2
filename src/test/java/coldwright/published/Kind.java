package coldwright.published;

/** What a published table is worth as a check: the line {@code # kind:} in its header. */
public enum Kind {
    MEASUREMENT(
            "others' measurements",
            "measured or stated of nature by others; a miss is a miss of the model"),
    THEORY(
            "others' theory",
            "equations, formulations and worked examples of others; judges the arithmetic, not nature"),
    CONSTANT(
            "typed-in constants",
            "the program has the same figures, so this judges the typing only"),
    ARITHMETIC(
            "our arithmetic", "calculated by us from published constants: judges units and typing"),
    MEMORY("from memory", "recalled, no page opened: a hint"),
    PRACTICE("common practice, no source", "what cooks report: a hint");

    private final String words;
    private final String worth;

    Kind(String words, String worth) {
        this.words = words;
        this.worth = worth;
    }

    /** As the report prints it. */
    public String words() {
        return words;
    }

    /** What such a check can tell. */
    public String worth() {
        return worth;
    }
}
