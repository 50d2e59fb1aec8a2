/**
 * The lesson text: what a lesson is made of, how it is read from CommonMark with every part's line
 * kept, and how faults in it are told. Nothing here runs a snippet or draws.
 */
package coldwright.lesson;
