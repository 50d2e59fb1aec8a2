package coldwright.science.mix;

import coldwright.science.Band;

/**
 * Sweetness by mass, sucrose 100.
 *
 * <p>Fructose 170–173, glucose 74–80, maltose 30–33, lactose 15–20, sorbitol 50–60: three published
 * lists, read but their titles not written down, spread as shown (other tests find up to 30 % more
 * or less, fructose down to 110). Galactose, trehalose, glycerol and higher saccharides: from
 * memory. Range: near 10 % in water at room temperature; the ratio changes with strength, cold,
 * acid and other sugars.
 */
public enum Sweetener {
    SUCROSE(Component.SUCROSE, new Band(100, 100, 100)),
    FRUCTOSE(Component.FRUCTOSE, new Band(170, 171.5, 173)),
    GLUCOSE(Component.GLUCOSE, new Band(74, 77, 80)),
    MALTOSE(Component.MALTOSE, new Band(30, 31.5, 33)),
    LACTOSE(Component.LACTOSE, new Band(15, 17.5, 20)),
    SORBITOL(Component.SORBITOL, new Band(50, 55, 60)),
    /** From memory. */
    GALACTOSE(Component.GALACTOSE, new Band(50, 60, 65)),
    /** From memory. */
    TREHALOSE(Component.TREHALOSE, new Band(38, 43, 48)),
    /** From memory. */
    GLYCEROL(Component.GLYCEROL, new Band(50, 60, 75)),
    /** From memory: the longer the chain, the less. */
    HIGHER_SACCHARIDES(Component.HIGHER_SACCHARIDES, new Band(0, 8, 20));

    private final Component component;
    private final Band relativeSweetness;

    Sweetener(Component component, Band relativeSweetness) {
        this.component = component;
        this.relativeSweetness = relativeSweetness;
    }

    /** The component in a composition. */
    public Component component() {
        return component;
    }

    /** {@return sweetness by mass, sucrose 100, with the spread of the sources} */
    public Band relativeSweetness() {
        return relativeSweetness;
    }

    /** Grams of sucrose as sweet as 100 g, by the middle of the published spread. */
    static double podOf100g(Composition composition) {
        double sucroseG = 0;
        for (Sweetener sweetener : values()) {
            sucroseG +=
                    composition.percent(sweetener.component)
                            * sweetener.relativeSweetness.middle()
                            / 100;
        }
        return sucroseG;
    }
}
