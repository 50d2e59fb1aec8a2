package coldwright.science.freezer;

import coldwright.science.Require;
import coldwright.science.bath.ColdRun;
import coldwright.science.bath.IceAndSalt;
import coldwright.words.Phrase;
import coldwright.words.Worded;

/** A source of cold: a freezer, a refrigerated wall, a bath of ice and salt. */
public sealed interface Cold extends Worded {
    /** The film at the wall. */
    Film film();

    /** {@return the most heat that it can remove, W; infinite where only the films set a limit} */
    default double mostW() {
        return Double.POSITIVE_INFINITY;
    }

    /** Starts the clock. */
    ColdRun start();

    /**
     * A cold of constant temperature.
     *
     * @param temperatureC temperature, °C, −60 to −1
     * @param film the film at the wall
     */
    record Steady(double temperatureC, Film film) implements Cold {
        public Steady {
            Require.within("temperatureC", temperatureC, new Require.Range(-60, -1, "°C"));
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("science.freezer", "cold.freezer", temperatureC);
        }

        @Override
        public ColdRun start() {
            return () -> temperatureC;
        }
    }

    /**
     * The wall of a machine, as cold as its compressor can keep it.
     *
     * @param temperatureC temperature of the wall at rest, °C, −60 to −1
     * @param mostW the most heat that the compressor takes, W
     */
    record Machine(double temperatureC, double mostW) implements Cold {
        public Machine {
            Require.within("temperatureC", temperatureC, new Require.Range(-60, -1, "°C"));
            Require.positive("mostW", mostW, "W");
        }

        @Override
        public Film film() {
            return Film.REFRIGERANT;
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("science.freezer", "cold.machine", mostW, temperatureC);
        }

        @Override
        public ColdRun start() {
            return () -> temperatureC;
        }
    }

    /**
     * A bath of ice and salt.
     *
     * @param bath ice and salt
     * @param film how well the brine moves
     */
    record Bath(IceAndSalt bath, Film film) implements Cold {
        @Override
        public Phrase phrase() {
            return bath.phrase();
        }

        @Override
        public ColdRun start() {
            return bath.start();
        }
    }

    /**
     * A home freezer without a fan.
     *
     * @param temperatureC °C, −60 to −1
     */
    static Cold freezer(double temperatureC) {
        return new Steady(temperatureC, Film.STILL_AIR);
    }

    /**
     * A freezer with a fan.
     *
     * @param temperatureC °C, −60 to −1
     */
    static Cold fanFreezer(double temperatureC) {
        return new Steady(temperatureC, Film.MOVING_AIR);
    }

    /** A bath of ice and salt in lumps that only the batch itself moves, as in a bowl. */
    static Cold bath(IceAndSalt bath) {
        return new Bath(bath, Film.SLUSH);
    }

    /** A bath of ice and salt that is kept moving, as by a turning can. */
    static Cold stirredBath(IceAndSalt bath) {
        return new Bath(bath, Film.STIRRED_BRINE);
    }
}
