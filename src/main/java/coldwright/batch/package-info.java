/**
 * A batch file and its whole reckoning: what the commands print and the window shows.
 *
 * <p>Reading knows the file's format, reckoning asks the science, and neither knows who prints.
 */
package coldwright.batch;
