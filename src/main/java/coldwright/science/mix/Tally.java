package coldwright.science.mix;

import java.util.Locale;

/**
 * A count per 100 g beside the composition, because it overlaps it: solids of one origin, as the
 * trade names them, and dissolved small particles.
 */
public enum Tally {
    /** Milk solids not fat, without those of whey, % by mass. */
    MILK_SOLIDS_NOT_FAT,
    /** Solids of whey, fat left out, % by mass. */
    WHEY_SOLIDS,
    /** Solids of egg yolk, fat included, % by mass. */
    YOLK_SOLIDS,
    /** Fruit, fruit juice or fruit purée as bought, % by mass. */
    FRUIT,
    /** Citrus fruit or juice, which is part of {@link #FRUIT}, % by mass. */
    CITRUS_FRUIT,
    /** Dissolved ions of milk, fruit and other foods, added salt left out, mmol per 100 g. */
    IONS_MMOL,
    /** Molecules of {@link Component#HIGHER_SACCHARIDES}, mmol per 100 g. */
    HIGHER_SACCHARIDES_MMOL;

    /** {@return its name in lower case, as in ingredient files: {@code whey solids}} */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
