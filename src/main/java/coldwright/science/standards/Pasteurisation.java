package coldwright.science.standards;

import coldwright.science.Require;
import coldwright.science.Temperature;
import coldwright.words.Phrase;

/**
 * Holding times for pasteurising a mix, by the tables of the United States.
 *
 * <p>Every particle must stay at or above the temperature for the whole time, in equipment made for
 * it; a pot on a stove proves neither. A rule lists pairs of temperature and time, each valid "at
 * or above" its temperature, and nothing between them. So any temperature gets the time of the
 * highest listed temperature that it reaches: between two pairs that of the lower one, above the
 * last pair that of the last. Below the first pair there is no answer. See {@link Cooling} for how
 * fast to cool it afterwards.
 */
public enum Pasteurisation {
    /** A mix for frozen desserts: 21 CFR 135.3 (also 7 CFR 58.635). */
    MIX("21 CFR 135.3", new double[][] {{155, 1800}, {175, 25}}),

    /** Eggnog, the nearest rule for a mix rich in egg: 21 CFR 1240.61(c). */
    EGGNOG("21 CFR 1240.61(c)", new double[][] {{155, 1800}, {175, 25}, {180, 15}}),

    /** Milk with less than 10 % fat and no added sweetener: 21 CFR 1240.61(b). */
    MILK(
            "21 CFR 1240.61(b)",
            new double[][] {
                {145, 1800}, {161, 15}, {191, 1}, {194, .5}, {201, .1}, {204, .05}, {212, .01}
            }),

    /**
     * Milk with 10 % fat or more, or sweetened: 21 CFR 1240.61(b) with its footnote, which raises
     * the first two temperatures by 5 °F.
     */
    RICH_OR_SWEETENED_MILK(
            "21 CFR 1240.61(b), footnote 1",
            new double[][] {
                {150, 1800}, {166, 15}, {191, 1}, {194, .5}, {201, .1}, {204, .05}, {212, .01}
            });

    /** Tolerance within which a temperature counts as the listed one, °C. */
    private static final double SAME_C = 1e-9;

    private static final double LEAST_MINUTES_S = 120;

    private final String rule;
    private final double[][] fahrenheitAndSeconds;

    Pasteurisation(String rule, double[][] fahrenheitAndSeconds) {
        this.rule = rule;
        this.fahrenheitAndSeconds = fahrenheitAndSeconds;
    }

    /**
     * {@return how long to hold a mix: the time listed for the highest temperature of the table
     * that it reaches}
     *
     * @param temperatureC temperature of the coldest particle, °C, from the lowest listed
     *     temperature to {@value Temperature#WARMEST_C}
     * @throws IllegalArgumentException below the table
     */
    public Hold holdAt(double temperatureC) {
        Temperature.require("temperatureC", temperatureC);
        Require.that(
                temperatureC >= celsius(0) - SAME_C,
                "temperatureC is %s; %s lists no time below %s °C (%s °F). Heat it to that or more, and follow your local rules.",
                temperatureC,
                rule,
                roundedUp(celsius(0)),
                fahrenheitAndSeconds[0][0]);
        int i = fahrenheitAndSeconds.length - 1;
        while (celsius(i) > temperatureC + SAME_C) {
            i--;
        }
        return new Hold(temperatureC, fahrenheitAndSeconds[i][1], celsius(i), rule);
    }

    /** Rounds up to a tenth, so never below the rule. */
    private static String roundedUp(double temperatureC) {
        return Require.format(Math.ceil(temperatureC * 10 - 1e-6) / 10);
    }

    /** {@return the rule behind the table, such as {@code 21 CFR 135.3}} */
    public String rule() {
        return rule;
    }

    private double celsius(int point) {
        return (fahrenheitAndSeconds[point][0] - 32) / 1.8;
    }

    /**
     * A temperature and how long to hold it.
     *
     * @param temperatureC temperature, °C
     * @param seconds time, s, just as the rule lists it for {@code listedTemperatureC}
     * @param listedTemperatureC the highest temperature of the rule that is not above {@code
     *     temperatureC}, °C
     * @param rule the rule that lists the pair
     */
    public record Hold(
            double temperatureC, double seconds, double listedTemperatureC, String rule) {

        /**
         * {@return the hold in any language: the time, the listed temperature that it belongs to,
         * the rule and the reminder}
         */
        public Phrase phrase() {
            return Phrase.of(
                    LocalRules.AREA,
                    "hold",
                    at(),
                    duration(),
                    rule,
                    listedAt(),
                    LocalRules.REMINDER);
        }

        /**
         * {@return the hold as an English sentence: the time, the listed temperature that it
         * belongs to, the rule and the reminder}
         */
        public String sentence() {
            return phrase().english();
        }

        /** {@return the temperature in words: rounded up to a tenth, such as {@code 68.4 °C}} */
        public String at() {
            return roundedUp(temperatureC) + " °C";
        }

        /**
         * {@return the listed temperature in words: rounded up to a tenth, with the rule's own
         * figure: {@code 68.4 °C (155 °F)}}
         */
        public String listedAt() {
            return "%s °C (%s °F)"
                    .formatted(
                            roundedUp(listedTemperatureC),
                            Math.round(listedTemperatureC * 1.8 + 32));
        }

        /** {@return the time in words, such as {@code 30 minutes} or {@code 25 seconds}} */
        public String time() {
            return duration().english();
        }

        private Phrase duration() {
            return seconds >= LEAST_MINUTES_S
                    ? Phrase.of(LocalRules.AREA, "minutes", seconds / 60)
                    : Phrase.of(LocalRules.AREA, seconds == 1 ? "second" : "seconds", seconds);
        }
    }
}
