/**
 * Amounts that meet targets, and the smallest change to a batch that meets a wish.
 *
 * <p>Linear equations and root finding are Hipparchus'; this package states the problem and the
 * result.
 */
package coldwright.science.balance;
