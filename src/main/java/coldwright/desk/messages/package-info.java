/** The words of the window in several languages, and numbers as the page sets them. */
package coldwright.desk.messages;
