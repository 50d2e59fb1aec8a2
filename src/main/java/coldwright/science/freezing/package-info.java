/**
 * What sugar, salt, alcohol and milk salts do to ice: how far they lower the freezing point, and
 * how much of the water is ice at each temperature below it.
 *
 * <p>One law carries the package: a solution and ice rest together where water is equally active in
 * both ({@link coldwright.science.freezing.IceActivity} for the ice, {@link
 * coldwright.science.freezing.Solute} for what each dissolved thing takes away).
 *
 * <pre>{@code
 * var syrup = Solution.inWater(70).with(30, Solute.SUCROSE);
 * syrup.freezingPointC();                    // −2.65
 * syrup.freezingCurve().icePercentAt(-18);   // per cent of the water
 * }</pre>
 */
package coldwright.science.freezing;
