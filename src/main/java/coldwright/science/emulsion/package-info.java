/**
 * Fat in water: the size and coating of the globules, how fast they cream, when churning turns them
 * to butter, how much of the fat is solid, and how thick the mix is.
 */
package coldwright.science.emulsion;
