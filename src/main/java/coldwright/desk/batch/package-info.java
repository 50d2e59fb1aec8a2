/** The page of a cook's own batches: recipe, figures, goals, tasting and history, as nodes. */
package coldwright.desk.batch;
