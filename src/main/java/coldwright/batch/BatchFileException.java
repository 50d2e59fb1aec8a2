package coldwright.batch;

/** A batch file that can't be used; the message is one sentence with file, line and mend. */
public final class BatchFileException extends Exception {
    private static final long serialVersionUID = 1;

    /**
     * A fault on a line.
     *
     * @param file the file's name
     * @param line the line, from 1; 0 if it is the whole file
     * @param words what is wrong and the mend
     */
    public BatchFileException(String file, int line, String words) {
        super(line > 0 ? file + ":" + line + ": " + words : file + ": " + words);
    }
}
