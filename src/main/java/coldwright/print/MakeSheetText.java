package coldwright.print;

import coldwright.text.DisplayText;

/** Quantities as they appear on a make sheet. */
final class MakeSheetText {
    private static final double MINUTES_FROM_SECONDS = 120;

    private MakeSheetText() {}

    /** Grams: to a tenth from 10 g, to a hundredth below, without trailing zeros. */
    static String grams(double massG) {
        String text = DisplayText.decimals(massG < 10 ? 2 : 1, massG);
        return text.replaceFirst("\\.?0+$", "").isEmpty() || !text.contains(".")
                ? text
                : text.replaceFirst("\\.?0+$", "");
    }

    static String celsius(int places, double temperatureC) {
        return DisplayText.decimals(places, temperatureC) + " °C";
    }

    static String seconds(double seconds) {
        return seconds >= MINUTES_FROM_SECONDS
                ? DisplayText.decimals(0, seconds / 60) + " min"
                : DisplayText.decimals(0, seconds) + " s";
    }
}
