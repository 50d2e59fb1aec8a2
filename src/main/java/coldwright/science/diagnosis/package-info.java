/** Causes of a symptom, ranked by values calculated for the batch, and fixes with new figures. */
package coldwright.science.diagnosis;
