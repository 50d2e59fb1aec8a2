package coldwright.science.mix;

import coldwright.science.freezing.Solute;

/**
 * Anti-freezing power of a gram, relative to sucrose: a rule of thumb by molar mass.
 *
 * <p>Equation: 342.3/M, times the number of ions for a salt. By this rule one-unit sugars have
 * 1.90, lactose 1.00, glycerol 3.72, ethanol 7.43, sodium chloride 5.86, or 11.7 counted as ions.
 *
 * <p>Range: dilute. For a reliable figure use the freezing curve; this one compares recipes the way
 * the trade does.
 */
public final class AntiFreezingPower {
    private static final double SUCROSE_G_PER_MOL = Solute.SUCROSE.molarMassGPerMol();

    private AntiFreezingPower() {}

    /** {@return power of a gram, salts undissociated, sucrose 1} */
    public static double perGram(Solute solute) {
        return SUCROSE_G_PER_MOL / solute.molarMassGPerMol();
    }

    /** {@return power of a gram, each ion of a salt counted, sucrose 1} */
    public static double perGramOfIons(Solute solute) {
        return perGram(solute) * ions(solute);
    }

    /**
     * The trade's sum for 100 g: sugars, polyols, alcohol and salt, salt undissociated. Acids, milk
     * salts and other ions are left out, as the trade leaves them out.
     */
    static double pacOf100g(Composition composition) {
        double sucroseG =
                composition.per100g(Tally.HIGHER_SACCHARIDES_MMOL) / 1000 * SUCROSE_G_PER_MOL;
        for (Component component : Component.values()) {
            if (component.kind() != Component.Kind.ACID) {
                sucroseG +=
                        composition.percent(component)
                                * component.solute().map(AntiFreezingPower::perGram).orElse(0.0);
            }
        }
        return sucroseG;
    }

    private static int ions(Solute solute) {
        return switch (solute) {
            case SODIUM_CHLORIDE, POTASSIUM_CHLORIDE -> 2;
            case CALCIUM_CHLORIDE -> 3;
            default -> 1;
        };
    }
}
