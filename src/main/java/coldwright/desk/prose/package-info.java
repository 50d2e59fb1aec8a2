/** The lesson's prose: from parsed CommonMark to text nodes, typeset as in a book. */
package coldwright.desk.prose;
