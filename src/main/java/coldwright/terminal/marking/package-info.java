/** Marking what learners handed in, one file or a class of them. */
package coldwright.terminal.marking;
