/** Shared by all commands: screen, exit codes, a blocking bench, consent and text. */
package coldwright.terminal.console;
