/**
 * The bench: a separate Java process in which snippets run through the JShell API, how it is kept
 * warm, stopped and replaced, and how figures come back. JShell types stay in this package.
 */
package coldwright.bench;
