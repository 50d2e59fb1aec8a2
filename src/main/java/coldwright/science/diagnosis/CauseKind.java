package coldwright.science.diagnosis;

import coldwright.words.Worded;

/** A kind of cause of a symptom. */
public enum CauseKind implements Worded {
    COARSE_CRYSTALS,
    /** Varying temperature or warming in storage. */
    STORAGE,
    MUCH_ICE,
    LITTLE_ICE,
    /** The freezing point is too low for the cold that freezes it. */
    LOW_FREEZING_POINT,
    FEW_SOLIDS,
    NO_STABILISER,
    MUCH_STABILISER,
    MUCH_STARCH,
    MANY_SOLIDS,
    MUCH_FAT,
    LITTLE_FAT,
    MUCH_LACTOSE,
    LITTLE_PROTEIN,
    MUCH_AIR,
    MUCH_SWEETNESS
}
