package coldwright.print;

import coldwright.batch.BatchReport;
import coldwright.batch.Fact;
import coldwright.words.Words;

/** Texts and quantities as they appear on a make sheet, in the language shown. */
final class MakeSheetText {
    private static final Words WORDS = Words.of("print");

    private MakeSheetText() {}

    static String word(String key, Object... values) {
        return WORDS.shown("make." + key, values);
    }

    /** A mass without its unit: grams to a tenth from 10 g, to a hundredth below. */
    static String mass(double massG) {
        return word("mass", rounded(massG));
    }

    static double rounded(double massG) {
        double step = massG < 10 ? 100 : 10;
        return Math.round(massG * step) / step;
    }

    static String celsius(double temperatureC) {
        return word("celsius", temperatureC);
    }

    /** A time with its range, such as {@code 26 min (15 min to 52 min)}. */
    static String minutes(Fact fact) {
        Fact.Ends ends = fact.band().orElseThrow();
        return word(
                "range",
                BatchReport.time(fact.number()),
                BatchReport.time(ends.low()),
                BatchReport.time(ends.high()));
    }
}
