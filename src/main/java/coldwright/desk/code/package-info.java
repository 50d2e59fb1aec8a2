/** Java text as it is edited: which of its words are coloured, and the editor that shows them. */
package coldwright.desk.code;
