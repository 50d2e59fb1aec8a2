/** Search for fixes and goals of a batch, and for the causes of a fault found in tasting. */
package coldwright.desk.batch.search;
