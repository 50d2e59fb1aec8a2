/**
 * A recipe, its file and its whole analysis: what the commands print and the window shows.
 *
 * <p>The codec knows the file's format, the analysis asks the science, and neither knows who
 * prints.
 */
package coldwright.batch;
