/**
 * A recipe, its file and its analysis, as the commands print and the window shows them.
 *
 * <p>The file classes know the format, the analysis uses the science, and neither knows who shows
 * the results.
 */
package coldwright.batch;
