/**
 * A lesson on paper: the lesson, what its runs gave and what was asked for become one HTML text,
 * and that becomes a PDF. Nothing here runs a snippet or opens a file.
 */
package coldwright.print;
