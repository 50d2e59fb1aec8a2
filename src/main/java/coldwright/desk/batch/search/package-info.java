/** Looking for what fixes a batch: changes that reach a goal, and the causes of a tasted fault. */
package coldwright.desk.batch.search;
