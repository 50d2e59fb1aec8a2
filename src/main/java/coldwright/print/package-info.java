/**
 * Paper: a lesson as a handout, a batch as a make sheet. Each becomes one HTML text, which becomes
 * a PDF. Nothing here runs a snippet or opens a file.
 */
package coldwright.print;
