package coldwright.science.freezer;

import coldwright.science.Require;
import coldwright.words.Phrase;
import coldwright.words.Worded;

/**
 * A container for the batch: a bag, a tub or a churn. A batch higher than one and a half times the
 * width is shared among several.
 */
public sealed interface Holder extends Worded {
    /** Inner widths of tubs, boxes and churns. */
    Require.Range INNER = new Require.Range(30, 600, "mm");

    /** The wall between batch and cold. */
    Wall wall();

    /**
     * The shape of the content of one.
     *
     * @param volumeL volume of the whole content, L
     */
    Shape shape(double volumeL);

    /**
     * {@return how many of them the batch fills, one or more}
     *
     * @param volumeL volume of the whole content, L
     */
    default int count(double volumeL) {
        return 1;
    }

    /**
     * {@return surface that is cooled, of all together, m²}
     *
     * @param volumeL volume of the content, L
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
        public Bag {
            Require.within("thicknessMm", thicknessMm, new Require.Range(3, 100, "mm"));
        }

        /**
         * A polythene bag in a second one.
         *
         * @param thicknessMm thickness of the content, mm, 3 to 100
         */
        public static Bag flat(double thicknessMm) {
            return new Bag(thicknessMm, Wall.DOUBLE_BAG);
        }

        @Override
        public Shape shape(double volumeL) {
            return Shape.slab(thicknessMm);
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("science.freezer", "holder.bag", thicknessMm);
        }
    }

    /**
     * A round tub, filled as high as the content reaches, cooled all round.
     *
     * @param diameterMm inner diameter, mm, 30 to 600
     * @param wall its wall
     */
    record Tub(double diameterMm, Wall wall) implements Holder {
        public Tub {
            Require.within("diameterMm", diameterMm, INNER);
        }

        /**
         * A plastic tub.
         *
         * @param diameterMm inner diameter, mm, 30 to 600
         */
        public static Tub round(double diameterMm) {
            return new Tub(diameterMm, Wall.PLASTIC_TUB);
        }

        @Override
        public int count(double volumeL) {
            return sharedAmong(diameterMm, heightMm(volumeL));
        }

        @Override
        public Shape shape(double volumeL) {
            return Shape.tub(diameterMm, Math.max(1, heightMm(volumeL) / count(volumeL)));
        }

        private double heightMm(double volumeL) {
            return volumeL * 1e6 / (Math.PI * diameterMm * diameterMm / 4);
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("science.freezer", "holder.tub", diameterMm);
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
        public Box {
            Require.within("lengthMm", lengthMm, INNER);
            Require.within("widthMm", widthMm, INNER);
        }

        /**
         * A plastic box.
         *
         * @param lengthMm inner length, mm, 30 to 600
         * @param widthMm inner width, mm, 30 to 600
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
        public Phrase phrase() {
            return Phrase.of("science.freezer", "holder.box", lengthMm, widthMm);
        }
    }

    /**
     * A churn: a can cooled on its side and bottom.
     *
     * @param diameterMm inner diameter, mm, 30 to 600
     * @param wall its wall
     */
    record Churn(double diameterMm, Wall wall) implements Holder {
        public Churn {
            Require.within("diameterMm", diameterMm, INNER);
        }

        /**
         * A steel can.
         *
         * @param diameterMm inner diameter, mm, 30 to 600
         */
        public static Churn of(double diameterMm) {
            return new Churn(diameterMm, Wall.STEEL);
        }

        @Override
        public int count(double volumeL) {
            return new Tub(diameterMm, wall).count(volumeL);
        }

        @Override
        public Shape shape(double volumeL) {
            return new Tub(diameterMm, wall).shape(volumeL);
        }

        @Override
        public double cooledM2(double volumeL) {
            double lidM2 = Math.PI * diameterMm * diameterMm / 4e6;
            return shape(volumeL).surfacePerVolumePerM() * volumeL / 1000 - count(volumeL) * lidM2;
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("science.freezer", "holder.churn", diameterMm);
        }
    }

    private static int sharedAmong(double widthMm, double heightMm) {
        return (int) Math.max(1, Math.ceil(heightMm / (1.5 * widthMm)));
    }
}
