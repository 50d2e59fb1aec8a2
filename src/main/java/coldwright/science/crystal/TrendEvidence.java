package coldwright.science.crystal;

/** What is published of each kind of step, and what is only this model's figure. */
final class TrendEvidence {
    static final String MOVED =
            "Freezing: that quick freezing and motion give small crystals is published; the figure is this model's, a trend.";
    static final String STILL =
            "Still freezing: crystals are columns, longer than wide; the figure is their width, a trend.";
    static final String SHOCK =
            "Heat shock: that swings coarsen faster is published (Donhowe and Hartel 1996); how much is this model's, a trend.";
    static final String BLENDED =
            "Blending: that it breaks crystals is common practice; how far is set by judgement, a trend.";
    static final String SWINGS =
            "Swings: that they coarsen faster is published (Donhowe and Hartel 1996, ±1 °C); how much is this model's, a trend.";
    static final String STORAGE =
            "Storage: growth as the cube root of time, faster when warmer, is published (Donhowe and Hartel 1996); the rate is reckoned from diffusion, within a factor of 2.";

    private TrendEvidence() {}
}
