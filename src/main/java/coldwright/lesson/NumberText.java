package coldwright.lesson;

/** Numbers as lessons write them: {@code 12.5}, {@code -18} or {@code −18}. */
final class NumberText {
    /** Matches one number. */
    static final String PATTERN = "[+−-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+−-]?\\d+)?";

    private NumberText() {}

    static double parse(String text) {
        return Double.parseDouble(text.replace('−', '-').replace(" ", "").replace("_", ""));
    }

    /** Writes a number back the way a lesson would. */
    static String spoken(double value) {
        String text =
                value == Math.rint(value) && Math.abs(value) < 1e15
                        ? Long.toString((long) value)
                        : Double.toString(value);
        return text.replace('-', '−');
    }
}
