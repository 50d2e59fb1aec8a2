/** The page of a cook's own batches: recipe, figures, wishes, tasting and history, as nodes. */
package coldwright.desk.batch;
