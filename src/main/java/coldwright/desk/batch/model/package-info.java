/**
 * A cook's own batches without a window: their lines as typed, their figures, their history. What
 * is reckoned is the text of the batch file itself, so that the page and the terminal can't differ.
 */
package coldwright.desk.batch.model;
