/** Freezing over time: how long until a bag, tub or churn is soft-serve, scoopable or hardened. */
package coldwright.science.freezer;
