/** Hand-ins: a learner's work in a lesson as one readable file. */
package coldwright.workbook.handin;
