/** Recipes as people write them: lines of ingredients, amounts in any unit, whole pasted pages. */
package coldwright.recipe;
