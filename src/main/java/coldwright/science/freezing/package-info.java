/**
 * Freezing point depression by sugar, salt, alcohol and milk salts, and the share of the water that
 * is ice at each temperature.
 *
 * <p>One law underlies the package: a solution and ice are in equilibrium where water is equally
 * active in both ({@link coldwright.science.freezing.IceActivity} for the ice, {@link
 * coldwright.science.freezing.Solute} for each dissolved substance).
 *
 * <pre>{@code
 * var syrup = Solution.inWater(70).with(30, Solute.SUCROSE);
 * syrup.freezingPointC();                    // −2.65
 * syrup.freezingCurve().icePercentAt(-18);   // per cent of the water
 * }</pre>
 */
package coldwright.science.freezing;
