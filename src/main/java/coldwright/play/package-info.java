/** Playing a lesson: one loop runs its snippets and tries what it says; listeners hear of it. */
package coldwright.play;
