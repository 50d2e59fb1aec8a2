package coldwright.science.glass;

import coldwright.science.Band;

/**
 * The surroundings of a cooling wafer, with the heat that each square metre loses per degree.
 *
 * <p>Air: still 5–10, moving 20–40 W/(m²·K) (from memory), plus radiation, which is calculated
 * separately. Contact with a tool: by judgement.
 */
public enum Surroundings {
    /** In the still air of a quiet kitchen. */
    STILL_AIR(new Band(5, 7, 10)),
    /** Beside an open window or a fan. */
    MOVING_AIR(new Band(20, 28, 40)),
    /** Rolled on a wooden form. */
    ON_WOOD(new Band(30, 50, 80)),
    /** Rolled on a metal form at room temperature. */
    ON_METAL(new Band(80, 150, 300));

    private final Band filmWPerM2K;

    Surroundings(Band filmWPerM2K) {
        this.filmWPerM2K = filmWPerM2K;
    }

    /** {@return surface coefficient without radiation, W/(m²·K), with its spread} */
    public Band filmWPerM2K() {
        return filmWPerM2K;
    }

    boolean inAir() {
        return this == STILL_AIR || this == MOVING_AIR;
    }
}
