/** What a user chose: settings, and the lessons that may run. */
package coldwright.workbook.settings;
