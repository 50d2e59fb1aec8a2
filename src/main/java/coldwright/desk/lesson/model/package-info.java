/** A lesson as the learner has it, without a window: steps and their parts, runs, and progress. */
package coldwright.desk.lesson.model;
