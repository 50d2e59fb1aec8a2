/**
 * The page itself: thin views that build nodes and bind them to the models. The styles are in
 * {@code page.css}.
 */
package coldwright.desk.page;
