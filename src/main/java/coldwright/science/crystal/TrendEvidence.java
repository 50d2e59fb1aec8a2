package coldwright.science.crystal;

import coldwright.words.Worded;

/** Evidence for each kind of step: published, or only this model's figure. */
enum TrendEvidence implements Worded {
    MOVED,
    STILL,
    SHOCK,
    BLENDED,
    SWINGS,
    STORAGE
}
