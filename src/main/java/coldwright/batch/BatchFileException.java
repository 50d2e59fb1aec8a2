package coldwright.batch;

/** A recipe that can't be used; the message states the problem, the place and the fix. */
public final class BatchFileException extends Exception {
    private static final long serialVersionUID = 1;

    /**
     * An error in a recipe.
     *
     * @param words the problem and the fix
     */
    public BatchFileException(String words) {
        super(words);
    }

    /**
     * An error on a line of a file.
     *
     * @param line the line, from 1; 0 for the whole file
     * @param words the problem and the fix
     */
    public BatchFileException(String file, int line, String words) {
        super(line > 0 ? file + ":" + line + ": " + words : file + ": " + words);
    }
}
