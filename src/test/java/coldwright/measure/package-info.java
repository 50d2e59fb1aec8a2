/**
 * How long the reckoning takes, by JMH.
 *
 * <p>Every work stands beside a yardstick: the same sums written out by hand on plain arrays, where
 * that makes sense, so that what the program's shape costs can be seen. Medians count; the goals
 * stand in each class.
 */
package coldwright.measure;
