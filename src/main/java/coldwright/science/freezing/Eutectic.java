package coldwright.science.freezing;

/**
 * Where a salt and water freeze out together and no brine is left.
 *
 * @param temperatureC temperature, °C
 * @param molality salt in the last brine, mol per kg of water, as the salt's own model has it
 *     there; colder liquids are taken to hold no more
 */
record Eutectic(double temperatureC, double molality) {
    static Eutectic at(double temperatureC, SoluteActivity binding) {
        return new Eutectic(temperatureC, binding.molality(IceActivity.minusLn(temperatureC)));
    }
}
