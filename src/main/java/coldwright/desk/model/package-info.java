/**
 * What the desk knows: lessons, steps, snippets and what came of their runs, as properties and
 * commands without a single control. All of it is used on the window's thread alone; what comes
 * from other threads passes through the {@code Executor} that stands for that thread.
 */
package coldwright.desk.model;
