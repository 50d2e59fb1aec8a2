/**
 * A user's saved data: work in lessons, settings, agreements. Readable text files in one folder,
 * each written whole or not at all. Independent of the window.
 */
package coldwright.workbook;
