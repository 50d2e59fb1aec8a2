package coldwright.science;

/** Tables with rising values. */
public final class Sorted {
    private Sorted() {}

    /**
     * The last place before the end whose value is no greater than a wanted one; 0 if the first is
     * greater already.
     *
     * @param rising values that never fall
     * @param size how many of them count, two or more
     * @param wanted the value to find
     */
    public static int place(double[] rising, int size, double wanted) {
        int low = 0;
        int high = size - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (rising[middle] <= wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
