/** The Java editor: highlighting, suggestions and the editor itself. */
package coldwright.desk.code;
