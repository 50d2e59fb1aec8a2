/** The glossary of the trade's terms, and where they appear in a text. */
package coldwright.desk.glossary;
