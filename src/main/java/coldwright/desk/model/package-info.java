/**
 * Models of the window: lessons, steps, snippets and their results, as properties and commands
 * without controls. All are used on the window's thread alone; results from other threads arrive
 * through the {@code Executor} that represents that thread.
 */
package coldwright.desk.model;
