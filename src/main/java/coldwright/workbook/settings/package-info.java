/** A user's choices: settings, and the lessons that may run. */
package coldwright.workbook.settings;
