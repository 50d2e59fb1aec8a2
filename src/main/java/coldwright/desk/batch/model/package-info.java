/**
 * A cook's own batches without a window: lines as typed, figures, history. The text of the recipe
 * file itself is calculated, so that the page and the terminal can't differ.
 */
package coldwright.desk.batch.model;
