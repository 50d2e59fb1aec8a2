/** A learner's work in one lesson as an immutable value, and its text form. */
package coldwright.workbook.work;
