package coldwright.batch;

/** A recipe that can't be used; the message says what is wrong, where, and how to fix it. */
public final class BatchFileException extends Exception {
    private static final long serialVersionUID = 1;

    /**
     * A fault of a recipe, wherever it is from.
     *
     * @param words what is wrong and the fix
     */
    public BatchFileException(String words) {
        super(words);
    }

    /**
     * A fault on a line of a file.
     *
     * @param file the file's name
     * @param line the line, from 1; 0 if it is the whole file
     * @param words what is wrong and the fix
     */
    public BatchFileException(String file, int line, String words) {
        super(line > 0 ? file + ":" + line + ": " + words : file + ": " + words);
    }
}
