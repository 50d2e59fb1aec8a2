/** Walking through a lesson in the terminal: text, question, run, figure, explanation. */
package coldwright.terminal.walk;
