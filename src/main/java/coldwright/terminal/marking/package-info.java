/** Marking hand-ins, one file or a whole class. */
package coldwright.terminal.marking;
