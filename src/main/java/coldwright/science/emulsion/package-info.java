/**
 * Fat in water: how fine the globules are, what covers them, how fast they cream, when churning
 * turns them to butter, how much of the fat is solid, and how thick the mix is.
 */
package coldwright.science.emulsion;
