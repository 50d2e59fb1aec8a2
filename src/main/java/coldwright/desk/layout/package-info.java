/** Layout shared by all pages of the window: widths, type size, styles, and small controls. */
package coldwright.desk.layout;
