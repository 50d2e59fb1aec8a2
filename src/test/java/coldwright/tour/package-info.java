/**
 * A walk through the lessons in the real window, as a learner would take it: forecasts answered,
 * snippets run, dials turned from end to end, exercises tried. It needs a display and is no test;
 * it says what was troubled and leaves a picture of every step.
 */
package coldwright.tour;
