package coldwright.science.mix;

import coldwright.words.Worded;

/** Who eats an ingredient, by what it is usually made of. */
public enum Diet implements Worded {
    VEGAN,
    /** With milk, egg or honey. */
    VEGETARIAN,
    /** With gelatine or another part of an animal. */
    ANIMAL,
    /** Makers differ: read the label. */
    CHECK
}
