/** The window's texts in several languages, and controls that show them. */
package coldwright.desk.messages;
