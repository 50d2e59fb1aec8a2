/**
 * Figures as plates on the page: shown, read off, looked at closely, kept beside others, saved,
 * played, and drawn before the run.
 */
package coldwright.desk.figure;
