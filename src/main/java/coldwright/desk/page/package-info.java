/**
 * The page itself: thin views that build nodes and bind them to the models. How it looks is said in
 * {@code page.css}.
 */
package coldwright.desk.page;
