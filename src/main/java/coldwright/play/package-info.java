/** Playing a lesson: one loop runs its snippets and tries its claims; listeners get the results. */
package coldwright.play;
