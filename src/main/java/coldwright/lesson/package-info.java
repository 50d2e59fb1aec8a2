/**
 * The lesson text: the parts of a lesson, how it is read from CommonMark with line numbers, and how
 * its faults are reported. Nothing here runs a snippet or draws.
 */
package coldwright.lesson;
