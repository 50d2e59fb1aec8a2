/**
 * Amounts that meet targets, and the smallest change to a batch that meets a wish.
 *
 * <p>Linear equations and root finding are Hipparchus'; this package says what is asked and what
 * came of it.
 */
package coldwright.science.balance;
