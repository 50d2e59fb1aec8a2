package coldwright.words;

/**
 * What has words in a bundle. Those of a constant of an enum are in its package's bundle, under the
 * names of the enum and the constant, such as {@code Texture.ICY}.
 */
public interface Worded {
    /**
     * It in any language.
     *
     * @return the phrase
     */
    default Phrase phrase() {
        if (this instanceof Enum<?> constant) {
            Class<?> type = constant.getDeclaringClass();
            return Phrase.of(
                    type.getPackageName().replaceFirst("^coldwright\\.", ""),
                    type.getSimpleName() + "." + constant.name());
        }
        throw new AssertionError(getClass());
    }

    /**
     * It in plain English words.
     *
     * @return such as {@code scoopable}
     */
    default String words() {
        return phrase().english();
    }
}
