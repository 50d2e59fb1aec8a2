/**
 * Mixes: ingredients from open data, their composition, and the trade's figures for them.
 *
 * <p>A {@link coldwright.science.mix.Mix} is amounts of {@link coldwright.science.mix.Ingredient}s;
 * the {@link coldwright.science.mix.Shelf} contains about 120 of them, each with the number of its
 * source row.
 */
package coldwright.science.mix;
