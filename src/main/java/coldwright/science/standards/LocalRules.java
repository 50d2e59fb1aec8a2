package coldwright.science.standards;

/** The words that go with every answer of this package. */
final class LocalRules {
    static final String REMINDER = "check your local rules";

    private LocalRules() {}
}
