/** Published tables that the tests compare the science with. */
package coldwright.published;
