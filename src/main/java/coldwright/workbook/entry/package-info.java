/** The text form of all files of the workbook: {@code key: value} lines and indented blocks. */
package coldwright.workbook.entry;
