/** Running snippets for the window: queue, consent, output and outcome. */
package coldwright.desk.run;
