/**
 * Amounts that meet targets, and the smallest change to a batch that meets a wish.
 *
 * <p>The mathematics (bounded least squares, root finding) is that of ojAlgo and Hipparchus; this
 * package says what is asked and what came of it.
 */
package coldwright.science.balance;
