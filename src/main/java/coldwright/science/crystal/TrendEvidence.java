package coldwright.science.crystal;

import coldwright.words.Phrase;

/** What is published of each kind of step, and what is only this model's figure. */
enum TrendEvidence {
    MOVED,
    STILL,
    SHOCK,
    BLENDED,
    SWINGS,
    STORAGE;

    Phrase phrase() {
        return Phrase.of("science.crystal", "evidence." + name());
    }
}
