package coldwright.science.emulsion;

import coldwright.science.Band;
import coldwright.science.Commented;
import coldwright.science.Require;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.glass.SyrupViscosity;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.List;

/**
 * The viscosity of a mix before it freezes: that of its syrup, times factors for globules and
 * proteins and for gums.
 *
 * <p>Syrup: {@link SyrupViscosity}. Globules, casein and swollen starch (H. Eilers 1941; for milk
 * T. H. M. Snoeren, A. J. Damman and H. J. Klok 1982, from memory): factor (1 + 1.25 Φ/(1 −
 * Φ/0.8))², Φ the volume of all of them: fat 1.09 mL/g, milk protein 3.4 (casein 3.9 and whey
 * protein 1.5 as in milk), other protein 2, cooked starch as {@link Thickener}. Gums: specific
 * viscosity 10 (x/4)^1.4 for x = c[η] up to 4, 10 (x/4)^3.3 above (E. R. Morris et al. 1981, from
 * memory); at rest, before shear thinning.
 *
 * <p>Range: 0 to 80 °C. Error: milk within its published 1.5 to 2 mPa·s at 20 °C; with gums a
 * factor of two to three, because gums differ by brand. Left out: ageing, fruit pulp, gels.
 *
 * @param mix the mix
 * @param cooked whether its starch has been cooked
 */
public record MixViscosity(Mix mix, boolean cooked) implements Commented {
    private static final double FAT_ML_PER_G = 1000 / FatSurface.FAT_KG_PER_M3;
    private static final double MILK_PROTEIN_ML_PER_G = 3.4;
    private static final double OTHER_PROTEIN_ML_PER_G = 2;
    private static final double EILERS = 1.25;
    private static final double TIGHTEST_SHARE = 0.8;
    private static final double FULLEST_SHARE = 0.72;
    private static final double OVERLAP = 4;
    private static final double AT_OVERLAP = 10;
    private static final double THIN_POWER = 1.4;
    private static final double THICK_POWER = 3.3;

    /** A mix with its starch raw; gums are recognised by the names of their ingredients. */
    public static MixViscosity of(Mix mix) {
        return new MixViscosity(mix, false);
    }

    /** The same with its starch cooked. */
    public MixViscosity withStarchCooked() {
        return new MixViscosity(mix, true);
    }

    /**
     * {@return viscosity at a temperature, mPa·s, with the spread of gums and starch}
     *
     * @param temperatureC temperature, °C, 0 to 80
     */
    public Band mPaSAt(double temperatureC) {
        return withFat(temperatureC, mix.fatPercent());
    }

    /**
     * {@return viscosity of the serum around the fat globules, mPa·s, with the spread of gums and
     * starch}
     *
     * @param temperatureC temperature, °C, 0 to 80
     */
    public Band serumMPaSAt(double temperatureC) {
        return withFat(temperatureC, 0);
    }

    private Band withFat(double temperatureC, double fatPercent) {
        Require.within("temperatureC", temperatureC, new Require.Range(0, 80, "°C"));
        double syrup = SyrupViscosity.mPaS(syrup(), temperatureC);
        Band gum = crowding();
        Band starch = Thickener.COOKED_STARCH.dLPerG();
        return new Band(
                syrup * eilers(starch.low(), fatPercent) * gums(gum.low()),
                syrup * eilers(starch.middle(), fatPercent) * gums(gum.middle()),
                syrup * eilers(starch.high(), fatPercent) * gums(gum.high()));
    }

    @Override
    public List<Phrase> comments() {
        List<Phrase> comments = new ArrayList<>();
        if (mix.composition().percent(Component.STABILISER) > 0) {
            comments.add(phrase("gums-differ"));
        }
        if (mix.composition().percent(Component.STARCH) > 0 && !cooked) {
            comments.add(phrase("raw-starch"));
        }
        if (volumeShare(Thickener.COOKED_STARCH.dLPerG().middle(), mix.fatPercent())
                > FULLEST_SHARE) {
            comments.add(phrase("paste"));
        }
        return List.copyOf(comments);
    }

    private static Phrase phrase(String key) {
        return Phrase.of("science.emulsion", key);
    }

    private Solution syrup() {
        Solution solution = mix.solution();
        double higherG =
                mix.massG() * mix.composition().percent(Component.HIGHER_SACCHARIDES) / 100;
        return higherG > 0 ? solution.with(higherG, Solute.SUCROSE) : solution;
    }

    private double eilers(double starchDLPerG, double fatPercent) {
        double share = Math.min(FULLEST_SHARE, volumeShare(starchDLPerG, fatPercent));
        double root = 1 + EILERS * share / (1 - share / TIGHTEST_SHARE);
        return root * root;
    }

    private double volumeShare(double starchDLPerG, double fatPercent) {
        double mL =
                FAT_ML_PER_G * fatPercent
                        + MILK_PROTEIN_ML_PER_G * mix.composition().percent(Component.MILK_PROTEIN)
                        + OTHER_PROTEIN_ML_PER_G
                                * mix.composition().percent(Component.OTHER_PROTEIN)
                        + (cooked
                                ? 100 * starchDLPerG * mix.composition().percent(Component.STARCH)
                                : 0);
        return mL * mix.densityKgPerL() / 100;
    }

    /** c[η] of all gums together. */
    private Band crowding() {
        Band sum = Band.exactly(0);
        for (Amount amount : mix.amounts()) {
            double g =
                    amount.massG()
                            * amount.ingredient().composition().percent(Component.STABILISER)
                            / 100;
            if (g > 0) {
                double dL = mix.massG() * Math.max(mix.waterPercent(), 1) / 100 / 100;
                sum = sum.plus(Thickener.of(amount.ingredient()).dLPerG().times(g / dL));
            }
        }
        return sum;
    }

    private static double gums(double crowding) {
        double power = crowding < OVERLAP ? THIN_POWER : THICK_POWER;
        return 1 + AT_OVERLAP * Math.pow(crowding / OVERLAP, power);
    }
}
