/**
 * From what somebody tastes to its causes, ranked by what is computed of the batch, and to the mend
 * with its new figures.
 */
package coldwright.science.diagnosis;
