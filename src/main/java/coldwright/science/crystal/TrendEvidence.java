package coldwright.science.crystal;

import coldwright.words.Worded;

/** What is published of each kind of step, and what is only this model's figure. */
enum TrendEvidence implements Worded {
    MOVED,
    STILL,
    SHOCK,
    BLENDED,
    SWINGS,
    STORAGE
}
