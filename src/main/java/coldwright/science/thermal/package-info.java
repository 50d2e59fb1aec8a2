/**
 * Heat in the batch: what its parts conduct, weigh and hold, how enthalpy follows temperature while
 * water turns to ice, and how much heat must leave.
 */
package coldwright.science.thermal;
