/**
 * What rules say of a mix: its name, its heating, its allergens, its alcohol.
 *
 * <p>Teaching aid, no legal advice: rules change and differ by place, so every answer carries the
 * words "check your local rules".
 */
package coldwright.science.standards;
