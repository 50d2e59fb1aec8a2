package coldwright.science.emulsion;

import coldwright.science.Band;
import coldwright.science.Require;
import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Tally;
import coldwright.words.Phrase;
import coldwright.words.Worded;

/**
 * Fat globules that meet while a mix is moved and stick together (partial coalescence): a little of
 * it gives body, too much gives butter.
 *
 * <p>Equation (M. von Smoluchowski's meeting by shear): the share still single falls as e^(−t/τ), τ
 * = π/(4 α φ γ), φ fat by volume, γ the shear rate, α the share of meetings that stick.
 *
 * <p>α = 2.9·10⁻⁵ × c(s) × coat. It is fitted to one common practice (no source): cream of 35 %
 * fat, whisked cold, turns to butter in about 8 to 10 minutes; the band is a third and three times.
 * c(s) is the shape of a known trend (Walstra, from memory): globules all liquid or all solid do
 * not stick, those with 10 to 50 % solid do; c = 1 at 30 % solid, falling straight to 0 at 0 % and
 * to 0.1 at 90 %. Homogenised globules with their thick coat of protein: × 0.3; with added
 * emulsifier or yolk, which thin the coat: × 3 (trends from memory, figures by judgement). So the
 * result is a trend for comparing batches.
 *
 * @param fatVolumePercent fat by volume, %, 0 to 80
 * @param temperatureC temperature while it is moved, °C, −20 to 40
 * @param homogenised whether the globules are fine and coated with protein
 * @param emulsified whether yolk or added emulsifier is present
 */
public record Churning(
        double fatVolumePercent, double temperatureC, boolean homogenised, boolean emulsified) {
    /** From this share on the fat turns to butter and buttermilk, % of the fat; by judgement. */
    public static final double BUTTER_PERCENT = 65;

    /** From this share on the product feels greasy, % of the fat; by judgement. */
    public static final double GREASY_PERCENT = 45;

    private static final Band STICKING = new Band(2.9e-5 / 3, 2.9e-5, 2.9e-5 * 3);
    private static final double BEST_SOLID_PERCENT = 30;
    private static final double ALL_SOLID_PERCENT = 90;
    private static final double STICKING_ALL_SOLID = 0.1;
    private static final double HOMOGENISED_COAT = 0.3;
    private static final double THINNED_COAT = 3;

    /** Least added emulsifier that matters, % of the mix; by judgement. */
    private static final double EMULSIFIED_PERCENT = 0.05;

    /** Yolk solids of a frozen custard, % of the mix (US 21 CFR 135.110). */
    private static final double CUSTARD_PERCENT = 1.4;

    public Churning {
        Require.within("fatVolumePercent", fatVolumePercent, new Require.Range(0, 80, "%"));
        Require.within("temperatureC", temperatureC, new Require.Range(-20, 40, "°C"));
    }

    /**
     * A mix that was not homogenised; yolk and emulsifier follow from its composition.
     *
     * @param temperatureC temperature while it is moved, °C, −20 to 40
     */
    public static Churning of(Mix mix, double temperatureC) {
        boolean emulsified =
                mix.composition().percent(Component.EMULSIFIER) >= EMULSIFIED_PERCENT
                        || mix.composition().per100g(Tally.YOLK_SOLIDS) >= CUSTARD_PERCENT;
        return new Churning(
                Math.min(80, GlobuleField.fatVolumePercent(mix)), temperatureC, false, emulsified);
    }

    /** The same, homogenised. */
    public Churning withFineGlobules() {
        return new Churning(fatVolumePercent, temperatureC, true, emulsified);
    }

    /**
     * {@return fat that has clumped, % of the fat, a trend}
     *
     * @param minutes how long it is moved, min, zero or more
     */
    public Band clumpedPercent(double minutes, Motion motion) {
        Require.notNegative("minutes", minutes, "min");
        Band rate = perSecond(motion).times(minutes * 60);
        return rate.map(exponent -> 100 * (1 - Math.exp(-exponent)));
    }

    /** {@return when it turns to butter, min, infinite without fat or if all of it is liquid} */
    public Band minutesToButter(Motion motion) {
        double needed = -Math.log(1 - BUTTER_PERCENT / 100) / 60;
        return perSecond(motion).map(rate -> needed / rate);
    }

    /** What the fat has become. */
    public enum Outcome implements Worded {
        FINE,
        /** Fine, but butter is within the band. */
        NEAR_THE_LIMIT,
        GREASY,
        BUTTER
    }

    private static Outcome outcome(Band clumped) {
        if (clumped.middle() >= BUTTER_PERCENT) {
            return Outcome.BUTTER;
        }
        if (clumped.middle() >= GREASY_PERCENT) {
            return Outcome.GREASY;
        }
        return clumped.high() >= BUTTER_PERCENT ? Outcome.NEAR_THE_LIMIT : Outcome.FINE;
    }

    /**
     * {@return the outcome and the fat that has clumped, in any language; a trend}
     *
     * @param minutes how long it is moved, min
     */
    public Phrase judgement(double minutes, Motion motion) {
        Band clumped = clumpedPercent(minutes, motion);
        return phrase(
                "clumped",
                outcome(clumped).phrase(),
                clumped.middle(),
                clumped.low(),
                clumped.high());
    }

    /**
     * {@return the judgement as an English sentence, a trend}
     *
     * @param minutes how long it is moved, min
     */
    public String verdict(double minutes, Motion motion) {
        return judgement(minutes, motion).english();
    }

    private static Phrase phrase(String key, Object... values) {
        return Phrase.of("science.emulsion", key, values);
    }

    private Band perSecond(Motion motion) {
        double coat = (homogenised ? HOMOGENISED_COAT : 1) * (emulsified ? THINNED_COAT : 1);
        return STICKING.times(
                4
                        / Math.PI
                        * fatVolumePercent
                        / 100
                        * motion.shearPerS()
                        * coat
                        * solidFactor(MilkFat.solidPercent(temperatureC).middle()));
    }

    private static double solidFactor(double solidPercent) {
        if (solidPercent <= BEST_SOLID_PERCENT) {
            return solidPercent / BEST_SOLID_PERCENT;
        }
        double fall =
                (solidPercent - BEST_SOLID_PERCENT) / (ALL_SOLID_PERCENT - BEST_SOLID_PERCENT);
        return Math.max(STICKING_ALL_SOLID, 1 - (1 - STICKING_ALL_SOLID) * fall);
    }

    /** How it is moved, with its shear rate (by judgement). */
    public enum Motion {
        KNEADED_BAG(15),
        SHAKEN(40),
        SCRAPED_MACHINE(80),
        WHISK(200),
        BLENDER(2000);

        private final double shearPerS;

        Motion(double shearPerS) {
            this.shearPerS = shearPerS;
        }

        /** {@return shear rate, 1/s} */
        public double shearPerS() {
            return shearPerS;
        }
    }
}
