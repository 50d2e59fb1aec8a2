package coldwright.print;

import java.util.Locale;

/** Numbers and remarks as a make sheet says them. */
final class Told {
    private static final double HOURS_FROM_MINUTES = 120;

    private Told() {}

    static String decimals(int places, double value) {
        String text = String.format(Locale.ROOT, "%." + places + "f", value);
        String plain = text.matches("-0(\\.0+)?") ? text.substring(1) : text;
        return plain.replace('-', '−');
    }

    /** Grams: to a tenth from 10 g on, to a hundredth below, without an end of zeros. */
    static String grams(double massG) {
        String text = decimals(massG < 10 ? 2 : 1, massG);
        return text.replaceFirst("\\.?0+$", "").isEmpty() || !text.contains(".")
                ? text
                : text.replaceFirst("\\.?0+$", "");
    }

    static String celsius(int places, double temperatureC) {
        return decimals(places, temperatureC) + " °C";
    }

    static String seconds(double seconds) {
        return seconds >= HOURS_FROM_MINUTES
                ? decimals(0, seconds / 60) + " min"
                : decimals(0, seconds) + " s";
    }

    static String minutes(double minutes) {
        if (!Double.isFinite(minutes)) {
            return "never";
        }
        return minutes < HOURS_FROM_MINUTES
                ? decimals(0, minutes) + " min"
                : decimals(1, minutes / 60) + " h";
    }

    /** A remark with a capital and a full stop. */
    static String sentence(String words) {
        if (words.isEmpty()) {
            return words;
        }
        String capital = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return capital.matches("(?s).*[.!?]") ? capital : capital + ".";
    }
}
