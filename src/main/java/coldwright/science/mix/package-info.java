/**
 * What is in the mix: ingredients from open data, their composition, and what the trade reads off
 * it.
 *
 * <p>A {@link coldwright.science.mix.Mix} is amounts of {@link coldwright.science.mix.Ingredient}s;
 * the {@link coldwright.science.mix.Shelf} holds about 120 of them, each with the number of its
 * source row.
 */
package coldwright.science.mix;
