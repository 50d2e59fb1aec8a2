/**
 * Paper: a lesson as a handout, a batch as a make sheet. What was reckoned or run and what was
 * asked for become one HTML text, and that becomes a PDF. Nothing here runs a snippet or opens a
 * file.
 */
package coldwright.print;
