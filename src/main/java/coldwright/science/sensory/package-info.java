/** Sensory properties of a spoonful: sweetness, firmness, richness, overrun and weight. */
package coldwright.science.sensory;
