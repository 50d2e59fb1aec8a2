/**
 * Food rules for a mix: its name, its heating, its allergens, its alcohol.
 *
 * <p>A teaching aid, not legal advice: rules change and differ by place, so every answer includes
 * the reminder "check your local rules".
 */
package coldwright.science.standards;
