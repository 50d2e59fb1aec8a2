/** Running snippets for the window: one at a time, with consent, and what a run ended with. */
package coldwright.desk.run;
