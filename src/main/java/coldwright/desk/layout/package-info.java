/** What all pages of the window share: how wide, how large, in which style, and small controls. */
package coldwright.desk.layout;
