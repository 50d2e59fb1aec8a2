package coldwright.science.freezer;

import coldwright.science.Require;

/**
 * A container for the batch: a bag, a tub or a churn. A batch higher than one and a half times the
 * width is shared among several.
 */
public sealed interface Holder {
    /**
     * The wall between batch and cold.
     *
     * @return the wall
     */
    Wall wall();

    /**
     * The shape of the content of one.
     *
     * @param volumeL volume of the whole content, L
     * @return the shape
     */
    Shape shape(double volumeL);

    /**
     * Its name in plain words.
     *
     * @return such as {@code a bag 20 mm thick}
     */
    String words();

    /**
     * How many of them the batch fills.
     *
     * @param volumeL volume of the whole content, L
     * @return one or more
     */
    default int count(double volumeL) {
        return 1;
    }

    /**
     * Surface that is cooled, of all together.
     *
     * @param volumeL volume of the content, L
     * @return m²
     */
    default double cooledM2(double volumeL) {
        return shape(volumeL).surfacePerVolumePerM() * volumeL / 1000;
    }

    /**
     * A bag laid flat, cooled on both faces.
     *
     * @param thicknessMm thickness of the content, mm, 3 to 100
     * @param wall its wall
     */
    record Bag(double thicknessMm, Wall wall) implements Holder {
        /** Checks the thickness. */
        public Bag {
            Require.within("thicknessMm", thicknessMm, new Require.Range(3, 100, "mm"));
        }

        /**
         * A polythene bag in a second one.
         *
         * @param thicknessMm thickness of the content, mm, 3 to 100
         * @return the bag
         */
        public static Bag flat(double thicknessMm) {
            return new Bag(thicknessMm, Wall.DOUBLE_BAG);
        }

        @Override
        public Shape shape(double volumeL) {
            return Shape.slab(thicknessMm);
        }

        @Override
        public String words() {
            return "a bag %s mm thick".formatted(Require.format(thicknessMm));
        }
    }

    /**
     * A round tub, filled as high as the content reaches, cooled all round.
     *
     * @param diameterMm inner diameter, mm, 30 to 600
     * @param wall its wall
     */
    record Tub(double diameterMm, Wall wall) implements Holder {
        /** Checks the diameter. */
        public Tub {
            Require.within("diameterMm", diameterMm, new Require.Range(30, 600, "mm"));
        }

        /**
         * A plastic tub.
         *
         * @param diameterMm inner diameter, mm, 30 to 600
         * @return the tub
         */
        public static Tub round(double diameterMm) {
            return new Tub(diameterMm, Wall.PLASTIC_TUB);
        }

        @Override
        public int count(double volumeL) {
            return sharedAmong(diameterMm, heightMm(diameterMm, volumeL));
        }

        @Override
        public Shape shape(double volumeL) {
            return standing(diameterMm, volumeL, count(volumeL));
        }

        @Override
        public String words() {
            return "a tub %s mm wide".formatted(Require.format(diameterMm));
        }
    }

    /**
     * A rectangular box, filled as high as the content reaches, cooled all round.
     *
     * @param lengthMm inner length, mm, 30 to 600
     * @param widthMm inner width, mm, 30 to 600
     * @param wall its wall
     */
    record Box(double lengthMm, double widthMm, Wall wall) implements Holder {
        /** Checks both. */
        public Box {
            Require.within("lengthMm", lengthMm, new Require.Range(30, 600, "mm"));
            Require.within("widthMm", widthMm, new Require.Range(30, 600, "mm"));
        }

        /**
         * A plastic box.
         *
         * @param lengthMm inner length, mm, 30 to 600
         * @param widthMm inner width, mm, 30 to 600
         * @return the box
         */
        public static Box of(double lengthMm, double widthMm) {
            return new Box(lengthMm, widthMm, Wall.PLASTIC_TUB);
        }

        @Override
        public int count(double volumeL) {
            return sharedAmong(Math.min(lengthMm, widthMm), 1e6 * volumeL / (lengthMm * widthMm));
        }

        @Override
        public Shape shape(double volumeL) {
            double heightMm = 1e6 * volumeL / (lengthMm * widthMm) / count(volumeL);
            return Shape.bar(lengthMm, widthMm).ofLength(Math.max(1, heightMm));
        }

        @Override
        public String words() {
            return "a box %s × %s mm".formatted(Require.format(lengthMm), Require.format(widthMm));
        }
    }

    /**
     * A churn: a can cooled on its side and bottom.
     *
     * @param diameterMm inner diameter, mm, 30 to 600
     * @param wall its wall
     */
    record Churn(double diameterMm, Wall wall) implements Holder {
        /** Checks the diameter. */
        public Churn {
            Require.within("diameterMm", diameterMm, new Require.Range(30, 600, "mm"));
        }

        /**
         * A steel can.
         *
         * @param diameterMm inner diameter, mm, 30 to 600
         * @return the churn
         */
        public static Churn of(double diameterMm) {
            return new Churn(diameterMm, Wall.STEEL);
        }

        @Override
        public int count(double volumeL) {
            return sharedAmong(diameterMm, heightMm(diameterMm, volumeL));
        }

        @Override
        public Shape shape(double volumeL) {
            return standing(diameterMm, volumeL, count(volumeL));
        }

        @Override
        public double cooledM2(double volumeL) {
            double lidM2 = Math.PI * diameterMm * diameterMm / 4e6;
            return shape(volumeL).surfacePerVolumePerM() * volumeL / 1000 - count(volumeL) * lidM2;
        }

        @Override
        public String words() {
            return "a churn %s mm wide".formatted(Require.format(diameterMm));
        }
    }

    private static double heightMm(double diameterMm, double volumeL) {
        return volumeL * 1e6 / (Math.PI * diameterMm * diameterMm / 4);
    }

    private static Shape standing(double diameterMm, double volumeL, int shared) {
        return Shape.tub(diameterMm, Math.max(1, heightMm(diameterMm, volumeL) / shared));
    }

    private static int sharedAmong(double widthMm, double heightMm) {
        return (int) Math.max(1, Math.ceil(heightMm / (1.5 * widthMm)));
    }
}
