package coldwright.science.glass;

import coldwright.science.Require;

/**
 * How fast a glass softens above its transition.
 *
 * <p>Equation: log₁₀(η/ηg) = −17.44 (T − Tg)/(51.6 + T − Tg), with ηg = 10¹² Pa·s.
 *
 * <p>Source: M. L. Williams, R. F. Landel and J. D. Ferry, J. Am. Chem. Soc. 77 (1955) 3701–3707,
 * "universal" constants (seen); ηg is the usual value (from memory). Range: Tg to Tg + 100 °C.
 * Error: the universal constants are off by up to 1.5 decades for sugars (M. P. Recondo et al., J.
 * Food Eng. 77 (2006) 126, abstract: they predict honey and sugar systems badly): use the result
 * for order and trend.
 *
 * <p>The named points are those of the glassmaker: strain-free anneal 10¹², softening point 10^6.6,
 * working point 10³ Pa·s (from memory).
 */
public final class Wlf {
    /** log₁₀ of the viscosity at the glass transition, Pa·s; from memory. */
    public static final double LOG_PAS_AT_GLASS = 12;

    /** log₁₀ of the viscosity at which glass slumps under its own weight, Pa·s; from memory. */
    public static final double LOG_PAS_SOFTENING = 6.6;

    private static final double C1 = 17.44;
    private static final double C2 = 51.6;
    private static final Require.Range ABOVE = new Require.Range(0, 100, "°C above the glass");

    private Wlf() {}

    /**
     * {@return viscosity above the glass transition, log₁₀ of the viscosity in Pa·s, 12 at the
     * glass transition}
     *
     * @param aboveGlassC how far above the glass transition, °C, 0 to 100
     */
    public static double logPaS(double aboveGlassC) {
        Require.within("aboveGlassC", aboveGlassC, ABOVE);
        return LOG_PAS_AT_GLASS - C1 * aboveGlassC / (C2 + aboveGlassC);
    }

    /**
     * {@return how far above the glass transition a viscosity is reached, °C above the glass
     * transition}
     *
     * @param logPaS log₁₀ of the viscosity in Pa·s, from 0.5 to 12
     */
    public static double aboveGlassC(double logPaS) {
        Require.within(
                "logPaS", logPaS, new Require.Range(logPaS(100), LOG_PAS_AT_GLASS, "log Pa·s"));
        double fall = LOG_PAS_AT_GLASS - logPaS;
        return C2 * fall / (C1 - fall);
    }
}
