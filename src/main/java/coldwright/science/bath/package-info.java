/** The bath of ice and salt: how cold, for how long, and how much of each a batch needs. */
package coldwright.science.bath;
