package coldwright.words;

/**
 * A thing with a text in a bundle. An enum constant has its text in the bundle of its package,
 * under the names of the enum and the constant, such as {@code Texture.ICY}.
 */
public interface Worded {
    /** Its text in any language. */
    default Phrase phrase() {
        if (this instanceof Enum<?> constant) {
            Class<?> type = constant.getDeclaringClass();
            return Phrase.of(
                    type.getPackageName().replaceFirst("^coldwright\\.", ""),
                    type.getSimpleName() + "." + constant.name());
        }
        throw new AssertionError(getClass());
    }

    /** Its English text, such as {@code scoopable}. */
    default String words() {
        return phrase().english();
    }
}
