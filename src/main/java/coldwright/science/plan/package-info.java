/**
 * One plan for a batch: the smallest change of ingredients, method or serving temperature that
 * resolves all of its faults at once.
 */
package coldwright.science.plan;
