package coldwright.science.freezer;

import coldwright.science.Require;
import coldwright.science.bath.BathRun;
import coldwright.science.bath.IceAndSalt;

/** Where the cold comes from: a freezer, a refrigerated wall, a bath of ice and salt. */
public sealed interface Cold {
    /** What lies against the wall. @return the film */
    Film film();

    /** In plain words. @return such as {@code a freezer at −18 °C} */
    String words();

    /** Starts the clock. */
    Run start();

    /** A source of cold in time. */
    interface Run {
        /** Temperature now, °C. */
        double temperatureC();

        /** Lets time pass, s, with heat from the batch, J. */
        void pass(double seconds, double batchJ);

        /** Ice left in the bath, g; not a number if there is no bath. */
        double iceG();
    }

    /**
     * A cold that batch and room do not change.
     *
     * @param temperatureC temperature, °C, −60 to −1
     * @param film what lies against the wall
     */
    record Steady(double temperatureC, Film film) implements Cold {
        /** Checks the temperature. */
        public Steady {
            Require.within("temperatureC", temperatureC, new Require.Range(-60, -1, "°C"));
        }

        @Override
        public String words() {
            return "%s at %s °C"
                    .formatted(
                            film == Film.REFRIGERANT ? "a refrigerated wall" : "a freezer",
                            Require.spoken(temperatureC));
        }

        @Override
        public Run start() {
            return new Run() {
                @Override
                public double temperatureC() {
                    return temperatureC;
                }

                @Override
                public void pass(double seconds, double batchJ) {}

                @Override
                public double iceG() {
                    return Double.NaN;
                }
            };
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
        public String words() {
            return bath.toString();
        }

        @Override
        public Run start() {
            BathRun run = bath.start();
            return new Run() {
                @Override
                public double temperatureC() {
                    return run.temperatureC();
                }

                @Override
                public void pass(double seconds, double batchJ) {
                    run.pass(seconds, batchJ);
                }

                @Override
                public double iceG() {
                    return run.iceG();
                }
            };
        }
    }

    /**
     * A home freezer without a fan.
     *
     * @param temperatureC °C, −60 to −1
     * @return the cold
     */
    static Cold freezer(double temperatureC) {
        return new Steady(temperatureC, Film.STILL_AIR);
    }

    /**
     * A freezer with a fan.
     *
     * @param temperatureC °C, −60 to −1
     * @return the cold
     */
    static Cold fanFreezer(double temperatureC) {
        return new Steady(temperatureC, Film.MOVING_AIR);
    }

    /**
     * The wall of a machine.
     *
     * @param temperatureC °C, −60 to −1
     * @return the cold
     */
    static Cold machine(double temperatureC) {
        return new Steady(temperatureC, Film.REFRIGERANT);
    }

    /**
     * A bath that is kept moving.
     *
     * @param bath ice and salt
     * @return the cold
     */
    static Cold bath(IceAndSalt bath) {
        return new Bath(bath, Film.STIRRED_BRINE);
    }
}
