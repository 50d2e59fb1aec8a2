package coldwright.workbook.work;

/** Indexes of snippets and predictions in a step. */
final class PartPositions {
    private static final int MOST = 99_999;

    private PartPositions() {}

    static void require(int index) {
        if (index < 0 || index > MOST) {
            throw new IllegalArgumentException(
                    "index is %d; it must be between 0 and %d".formatted(index, MOST));
        }
    }
}
