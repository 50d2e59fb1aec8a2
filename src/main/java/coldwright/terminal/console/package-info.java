/**
 * What all commands share: the screen, exit codes, a bench that is waited for, consent, and text.
 */
package coldwright.terminal.console;
