package coldwright.science.mix;

import coldwright.science.LinearTable;
import coldwright.science.Require;

import java.util.Map;

/**
 * Solubility of sugars in water, by measured tables.
 *
 * <p>Sources: lactose, Hudson, and maltose, Gillis, both as printed in Lowe, Experimental Cookery;
 * sucrose, 0 and 20 °C, from a Russian sugar handbook (64.44 and 66.74 %; Browne prints 64.18 % at
 * 0 °C). Each sugar alone in water; other sugars lower it. Linear between the points, never
 * extrapolated.
 */
public final class SugarSolubility {
    /** Temperature, °C, and g per 100 g of water. */
    private static final Map<Component, LinearTable> TABLES =
            Map.of(
                    Component.LACTOSE,
                            new LinearTable(
                                    new double[][] {{0, 11.9}, {15, 16.9}, {25, 21.6}, {39, 31.5}}),
                    Component.MALTOSE,
                            new LinearTable(new double[][] {{0.6, 56.5}, {21, 78.9}, {29.6, 93.2}}),
                    Component.SUCROSE,
                            new LinearTable(new double[][] {{0, 181.2}, {20, 200.7}, {40, 235.8}}));

    private SugarSolubility() {}

    /**
     * {@return solubility of one sugar, g of sugar, without crystal water, per 100 g of water}
     *
     * @param sugar sucrose, lactose or maltose
     * @param temperatureC temperature, °C, within the sugar's table
     * @throws IllegalArgumentException if there is no table or the temperature is outside it
     */
    public static double gPer100gWater(Component sugar, double temperatureC) {
        LinearTable table = TABLES.get(sugar);
        Require.that(
                table != null,
                "there is no solubility table for %s; use sucrose, lactose or maltose",
                sugar.words());
        Require.within(
                "temperatureC", temperatureC, new Require.Range(table.first(), table.last(), "°C"));
        return table.at(temperatureC);
    }
}
