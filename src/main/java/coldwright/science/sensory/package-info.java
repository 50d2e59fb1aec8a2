/** What a spoonful is like: how sweet, how firm, how rich, how airy, how heavy. */
package coldwright.science.sensory;
