package coldwright.print;

import coldwright.batch.BatchReport;
import coldwright.batch.Fact;
import coldwright.text.DisplayText;
import coldwright.words.Words;

/** Texts and quantities as they appear on a make sheet, in the language shown. */
final class MakeSheetText {
    private static final double MINUTES_FROM_SECONDS = 120;
    private static final Words WORDS = Words.of("print");

    private MakeSheetText() {}

    static String word(String key, Object... values) {
        return WORDS.text(Words.shown(), "make." + key, values);
    }

    /** Grams: to a tenth from 10 g, to a hundredth below, without trailing zeros. */
    static String grams(double massG) {
        String text = DisplayText.decimals(massG < 10 ? 2 : 1, massG);
        return text.replaceFirst("\\.?0+$", "");
    }

    static String celsius(int places, double temperatureC) {
        return DisplayText.decimals(places, temperatureC) + " °C";
    }

    static String seconds(double seconds) {
        return seconds >= MINUTES_FROM_SECONDS
                ? DisplayText.decimals(0, seconds / 60) + " min"
                : DisplayText.decimals(0, seconds) + " s";
    }

    /** A time with its range, such as {@code 26 min (15 min to 52 min)}. */
    static String minutes(Fact fact) {
        Fact.Ends ends = fact.band().orElseThrow();
        return word("range", time(fact.number()), time(ends.low()), time(ends.high()));
    }

    static String time(double minutes) {
        return BatchReport.time(minutes).shown();
    }
}
