package coldwright.science.standards;

import coldwright.words.Phrase;

/** The reminder that goes with every answer of this package. */
final class LocalRules {
    static final String AREA = "science.standards";
    static final Phrase REMINDER = Phrase.of(AREA, "reminder");

    private LocalRules() {}
}
