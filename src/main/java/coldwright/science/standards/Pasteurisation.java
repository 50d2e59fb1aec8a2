package coldwright.science.standards;

import coldwright.science.Require;
import coldwright.science.Temperature;

/**
 * How long a mix must be held at a temperature, by the tables of the United States.
 *
 * <p>Every particle must stay at or above the temperature for the whole time, in equipment made for
 * it; a pot on a stove proves neither. Between two points of a table the time is read on a straight
 * line of its logarithm, which is how the death of germs goes with temperature, and the answer says
 * so; outside the table there is no answer.
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

    private static final double SAME_C = 1e-9;

    private final String rule;
    private final double[][] fahrenheitAndSeconds;

    Pasteurisation(String rule, double[][] fahrenheitAndSeconds) {
        this.rule = rule;
        this.fahrenheitAndSeconds = fahrenheitAndSeconds;
    }

    /**
     * How long to hold at a temperature.
     *
     * @param temperatureC temperature of the coldest particle, °C, within the table
     * @return the time, and whether it stands in the table or was read between two of its points
     * @throws IllegalArgumentException outside the table
     */
    public Hold holdAt(double temperatureC) {
        Temperature.require("temperatureC", temperatureC);
        int last = fahrenheitAndSeconds.length - 1;
        if (temperatureC < celsius(0) - SAME_C || temperatureC > celsius(last) + SAME_C) {
            throw new IllegalArgumentException(
                    "temperatureC is %s; %s gives times from %s °C (%s s) to %s °C (%s s) only, and nothing is guessed beyond it: choose a temperature within, and check your local rules"
                            .formatted(
                                    Require.spoken(temperatureC),
                                    rule,
                                    Require.spokenToTenth(celsius(0)),
                                    Require.spoken(fahrenheitAndSeconds[0][1]),
                                    Require.spokenToTenth(celsius(last)),
                                    Require.spoken(fahrenheitAndSeconds[last][1])));
        }
        int i = 1;
        while (i < last && celsius(i) < temperatureC - SAME_C) {
            i++;
        }
        double share = (temperatureC - celsius(i - 1)) / (celsius(i) - celsius(i - 1));
        double lnSeconds =
                (1 - share) * Math.log(fahrenheitAndSeconds[i - 1][1])
                        + share * Math.log(fahrenheitAndSeconds[i][1]);
        boolean tabled =
                Math.abs(temperatureC - celsius(i - 1)) < SAME_C
                        || Math.abs(temperatureC - celsius(i)) < SAME_C;
        return new Hold(temperatureC, Math.exp(lnSeconds), !tabled, rule, LocalRules.REMINDER);
    }

    /**
     * The rule behind the table.
     *
     * @return such as {@code 21 CFR 135.3}
     */
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
     * @param seconds time, s
     * @param interpolated true if read between two points of the table
     * @param rule the rule that the table stands in
     * @param reminder {@code check your local rules}
     */
    public record Hold(
            double temperatureC,
            double seconds,
            boolean interpolated,
            String rule,
            String reminder) {

        /**
         * The hold as a sentence.
         *
         * @return with the rule and the reminder
         */
        public String sentence() {
            String time =
                    seconds >= 120
                            ? Require.spoken(Math.round(seconds / 6) / 10.0) + " minutes"
                            : Require.spoken(Math.round(seconds * 100) / 100.0) + " seconds";
            return "hold every part at %s °C or above for %s (%s%s); %s"
                    .formatted(
                            Require.spokenToTenth(temperatureC),
                            time,
                            rule,
                            interpolated ? ", read between two points of its table" : "",
                            reminder);
        }
    }
}
