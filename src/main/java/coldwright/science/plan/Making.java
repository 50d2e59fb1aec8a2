package coldwright.science.plan;

import coldwright.science.Require;
import coldwright.science.Temperature;
import coldwright.science.crystal.Method;

/**
 * How a batch is frozen, stored and served.
 *
 * @param method how it is frozen
 * @param iceG ice of the bath, g; 0 for a bath that suits the batch, and where there is none
 * @param saltG salt of the bath, g; 0 likewise
 * @param overrunPercent overrun, %, 0 to 200
 * @param servingC serving temperature, °C
 * @param steady whether it is stored without warming and temperature swings; the rest of its
 *     storage is the kitchen's business
 */
public record Making(
        Method method,
        double iceG,
        double saltG,
        double overrunPercent,
        double servingC,
        boolean steady) {
    public Making {
        Require.notNegative("iceG", iceG, "g");
        Require.notNegative("saltG", saltG, "g");
        Require.within("overrunPercent", overrunPercent, new Require.Range(0, 200, "%"));
        Temperature.require("servingC", servingC);
    }

    /** The same by another method, in a bath that suits the batch. */
    Making by(Method other) {
        return new Making(other, 0, 0, overrunPercent, servingC, steady);
    }

    Making inBath(double newIceG, double newSaltG) {
        return new Making(method, newIceG, newSaltG, overrunPercent, servingC, steady);
    }

    Making withOverrun(double percent) {
        return new Making(method, iceG, saltG, percent, servingC, steady);
    }

    Making servedAt(double celsius) {
        return new Making(method, iceG, saltG, overrunPercent, celsius, steady);
    }

    Making keptSteady() {
        return new Making(method, iceG, saltG, overrunPercent, servingC, true);
    }
}
