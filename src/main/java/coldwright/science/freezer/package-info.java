/**
 * Freezing in time: how cold goes into a bag, a tub or a churn, and how long until it is soft, to
 * be scooped, hard.
 */
package coldwright.science.freezer;
