/** The lesson's prose: from parsed CommonMark to text nodes, set as a book is set. */
package coldwright.desk.prose;
