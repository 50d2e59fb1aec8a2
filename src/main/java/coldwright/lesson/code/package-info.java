/** Java text as it is coloured, on a page of paper as on the screen. */
package coldwright.lesson.code;
