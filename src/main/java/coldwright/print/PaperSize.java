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

    /** Width and height in CSS. */
    String size() {
        return size;
    }
}
