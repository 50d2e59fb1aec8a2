package coldwright.science.standards;

import coldwright.words.Phrase;

/**
 * How fast a cooked mix must be cooled, by the usual rule for kitchens that serve food in the
 * United States.
 *
 * <p>Source: FDA Food Code 2022, section 3-501.14(A): from 57 °C (135 °F) to 21 °C (70 °F) within 2
 * hours, and to 5 °C (41 °F) or less within 6 hours in all. The model code was not opened itself;
 * its words were read as Delaware (16 Del. Admin. Code 3-501.14) and Oklahoma (Okla. Admin. Code
 * 310:257-5-57) adopted them. Local rules and licensed practice come first.
 */
public final class Cooling {
    /** Temperature at which the time starts, °C (135 °F). */
    public static final double FROM_C = 57;

    /** To be reached within {@value #FIRST_HOURS} hours, °C (70 °F). */
    public static final double FIRST_C = 21;

    /** Most time from {@value #FROM_C} °C to {@value #FIRST_C} °C, h. */
    public static final double FIRST_HOURS = 2;

    /** To be reached within {@value #ALL_HOURS} hours, °C (41 °F). */
    public static final double COLD_C = 5;

    /** Most time from {@value #FROM_C} °C to {@value #COLD_C} °C, h. */
    public static final double ALL_HOURS = 6;

    private Cooling() {}

    /** {@return the rule in any language: temperatures, times, the rule's name and the reminder} */
    public static Phrase phrase() {
        return Phrase.of(
                LocalRules.AREA,
                "cooling",
                FROM_C,
                FIRST_C,
                FIRST_HOURS,
                COLD_C,
                ALL_HOURS,
                Phrase.of(LocalRules.AREA, "rule.cooling"),
                LocalRules.REMINDER);
    }

    /** {@return the rule in English: temperatures, times, the rule's name and the reminder} */
    public static String sentence() {
        return phrase().english();
    }
}
