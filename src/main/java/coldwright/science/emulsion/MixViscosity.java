package coldwright.science.emulsion;

import coldwright.science.Band;
import coldwright.science.Commented;
import coldwright.science.Require;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.glass.SyrupViscosity;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.mix.Mix;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.List;

/**
 * The viscosity of a mix before it freezes: that of its serum, times a factor for its fat.
 *
 * <p>Serum: the syrup ({@link SyrupViscosity}), times (1 + 1.25 Φ/(1 − Φ/0.8))² for casein and
 * swollen starch (H. Eilers 1941; for milk T. H. M. Snoeren, A. J. Damman and H. J. Klok 1982, from
 * memory), Φ their volume: milk protein 3.4 mL/g (casein 3.9 and whey protein 1.5 as in milk),
 * other protein 2, cooked starch as {@link Thickener}; times a factor for gums, 1 + 10 (x/4)^1.4
 * for x = c[η] up to 4, 1 + 10 (x/4)^3.3 above (E. R. Morris et al., Carbohydr. Polym. 1 (1981) 5,
 * abstract read).
 *
 * <p>Fat: e^(0.1 F), F in % by mass, the factor of A. S. Bakshi and D. E. Smith, J. Dairy Sci. 67
 * (1984) 1157 (abstract read), for milk and cream to 30 % fat from 0 to 30 °C. Beyond 30 % between
 * that law and Eilers' growth from there; above 30 °C, where the fat is molten, between both laws.
 *
 * <p>At rest means 1 s⁻¹, where viscosity is the consistency K of a power law K γ^(n − 1); stirred
 * means 50 s⁻¹. Range: 0 to 80 °C. Error: milk and cream 15 % (expected), other mixes with fat a
 * factor of 2.6, because two papers on mixes without gum differ sevenfold (C. Liu et al. 2023; M.
 * BahramParvar and H. D. Goff 2013). Gums: their band. Left out: ageing, fruit pulp, gels.
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
    private static final double LN_PER_FAT_PERCENT = 0.1;
    private static final double SURE_FAT_PERCENT = 30;
    private static final double SURE_TO_C = 30;
    private static final double MILK_DOUBT = 1.15;
    private static final double MIX_DOUBT = 2.6;

    /** Sugars and starch beyond those of milk, above which a mix isn't milk or cream, %. */
    private static final double MILK_ALONE_PERCENT = 0.5;

    /** Shear rate of a mix that is stirred or poured, 1/s. */
    public static final double STIRRED_PER_S = 50;

    /** A mix with its starch raw; gums are recognised by the names of their ingredients. */
    public static MixViscosity of(Mix mix) {
        return new MixViscosity(mix, false);
    }

    /** The same with its starch cooked. */
    public MixViscosity withStarchCooked() {
        return new MixViscosity(mix, true);
    }

    /**
     * {@return viscosity of the mix at rest, at 1 s⁻¹, mPa·s}
     *
     * @param temperatureC temperature, °C, 0 to 80
     */
    public Band mPaSAt(double temperatureC) {
        Band serum = serumMPaSAt(temperatureC);
        double fat = mix.fatPercent();
        double high = Math.exp(LN_PER_FAT_PERCENT * fat);
        double low = high;
        if (temperatureC > SURE_TO_C) {
            low = crowdingByFat(fat);
        } else if (fat > SURE_FAT_PERCENT) {
            low =
                    Math.exp(LN_PER_FAT_PERCENT * SURE_FAT_PERCENT)
                            * crowdingByFat(fat)
                            / crowdingByFat(SURE_FAT_PERCENT);
        }
        double doubt = fat == 0 ? 1 : isMilk() ? MILK_DOUBT : MIX_DOUBT;
        return new Band(
                serum.low() * low / doubt,
                serum.middle() * Math.sqrt(low * high),
                serum.high() * high * doubt);
    }

    /**
     * {@return viscosity of the mix stirred, at 50 s⁻¹, mPa·s; at another shear rate that at rest
     * times its {@link #flowIndex} − 1st power}
     *
     * @param temperatureC temperature, °C, 0 to 80
     */
    public Band stirredMPaSAt(double temperatureC) {
        return mPaSAt(temperatureC).times(Math.pow(STIRRED_PER_S, flowIndex() - 1));
    }

    /**
     * {@return the flow index n of the power law: 1 without gum, less where stirring thins it; that
     * of each gum by its share of the crowding, in full from c[η] = 1 on (judgement)}
     */
    public double flowIndex() {
        double thinning = 0;
        double crowding = 0;
        for (Amount amount : mix.amounts()) {
            double x = crowding(amount).middle();
            crowding += x;
            thinning += x * (1 - Thickener.of(amount.ingredient()).flowIndex());
        }
        return 1 - thinning / Math.max(1, crowding);
    }

    /**
     * {@return viscosity of the serum around the fat globules at rest, mPa·s, with the spread of
     * gums and starch}
     *
     * @param temperatureC temperature, °C, 0 to 80
     */
    public Band serumMPaSAt(double temperatureC) {
        Require.within("temperatureC", temperatureC, new Require.Range(0, 80, "°C"));
        double syrup = SyrupViscosity.mPaS(syrup(), temperatureC);
        Band gum = Band.exactly(0);
        for (Amount amount : mix.amounts()) {
            gum = gum.plus(crowding(amount));
        }
        Band starch = Thickener.COOKED_STARCH.dLPerG();
        return new Band(
                syrup * eilers(serumShare(starch.low())) * gums(gum.low()),
                syrup * eilers(serumShare(starch.middle())) * gums(gum.middle()),
                syrup * eilers(serumShare(starch.high())) * gums(gum.high()));
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
        double solid = serumShare(Thickener.COOKED_STARCH.dLPerG().middle());
        if (fatShare(mix.fatPercent()) + solid * (1 - fatShare(mix.fatPercent())) > FULLEST_SHARE) {
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

    /** Whether it is milk or cream alone. */
    private boolean isMilk() {
        Composition all = mix.composition();
        double others =
                mix.sugarsPercent()
                        - all.percent(Component.LACTOSE)
                        + all.percent(Component.Kind.CARBOHYDRATE)
                        + all.percent(Component.STABILISER)
                        + mix.fatPercent()
                        - mix.milkFatPercent();
        return others < MILK_ALONE_PERCENT;
    }

    /** Eilers' factor for fat globules, % by mass, in the serum of the mix. */
    private double crowdingByFat(double fatPercent) {
        double serum = serumShare(Thickener.COOKED_STARCH.dLPerG().middle());
        double fat = fatShare(fatPercent);
        return eilers(fat + serum * (1 - fat)) / eilers(serum);
    }

    private static double eilers(double volumeShare) {
        double share = Math.min(FULLEST_SHARE, volumeShare);
        double root = 1 + EILERS * share / (1 - share / TIGHTEST_SHARE);
        return root * root;
    }

    private double fatShare(double fatPercent) {
        return FAT_ML_PER_G * fatPercent * mix.densityKgPerL() / 100;
    }

    /** Volume of protein and cooked starch, of the serum's. */
    private double serumShare(double starchDLPerG) {
        Composition all = mix.composition();
        double mL =
                MILK_PROTEIN_ML_PER_G * all.percent(Component.MILK_PROTEIN)
                        + OTHER_PROTEIN_ML_PER_G * all.percent(Component.OTHER_PROTEIN)
                        + (cooked ? 100 * starchDLPerG * all.percent(Component.STARCH) : 0);
        double fat = Math.min(0.99, fatShare(mix.fatPercent()));
        return mL * mix.densityKgPerL() / 100 / (1 - fat);
    }

    /** c[η] of the gum of an amount. */
    private Band crowding(Amount amount) {
        double percent = amount.ingredient().composition().percent(Component.STABILISER);
        double dL = mix.massG() * Math.max(mix.waterPercent(), 1) / 100 / 100;
        return percent == 0
                ? Band.exactly(0)
                : Thickener.of(amount.ingredient())
                        .dLPerG()
                        .times(amount.massG() * percent / 100 / dL);
    }

    private static double gums(double crowding) {
        double power = crowding < OVERLAP ? THIN_POWER : THICK_POWER;
        return 1 + AT_OVERLAP * Math.pow(crowding / OVERLAP, power);
    }
}
