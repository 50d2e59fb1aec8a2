/** The pages of a lesson: its steps, snippets, questions and checks, and the classroom view. */
package coldwright.desk.lesson;
