/**
 * What the program keeps for a user between two starts: work in lessons, settings, agreements.
 * Readable text files in one folder, each written whole or not at all. Knows no window.
 */
package coldwright.workbook;
