/** What a learner hands in of a lesson: one readable file. */
package coldwright.workbook.handin;
