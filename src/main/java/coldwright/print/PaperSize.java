package coldwright.print;

/** A sheet of paper. */
public enum PaperSize {
    /** 210 by 297 mm. */
    A4("210mm 297mm"),
    /** 8.5 by 11 inches. */
    LETTER("8.5in 11in");

    private final String size;

    PaperSize(String size) {
        this.size = size;
    }

    /** Its width and height as CSS has them. */
    String size() {
        return size;
    }
}
