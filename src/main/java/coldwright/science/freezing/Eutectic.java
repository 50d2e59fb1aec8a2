package coldwright.science.freezing;

/**
 * The eutectic of a salt and water, where both freeze out together and no brine is left.
 *
 * @param temperatureC temperature, °C
 * @param molality salt in the last brine, mol per kg of water, by the salt's own model; colder
 *     liquids are assumed to dissolve no more
 */
record Eutectic(double temperatureC, double molality) {
    static Eutectic at(double temperatureC, SoluteActivity binding) {
        return new Eutectic(temperatureC, binding.molality(IceActivity.minusLn(temperatureC)));
    }
}
