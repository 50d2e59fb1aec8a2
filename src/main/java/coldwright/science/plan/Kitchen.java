package coldwright.science.plan;

import coldwright.science.mix.Mix;

/** Freezes a batch by calculation, as the program does everywhere else. */
@FunctionalInterface
public interface Kitchen {
    /**
     * Freezes and stores a batch.
     *
     * @param batch everything in it
     * @param making how
     * @return what becomes of it
     */
    Frozen freeze(Mix batch, Making making);

    /**
     * A kitchen that only knows its cold.
     *
     * @param coldC °C
     * @return a kitchen where everything freezes and no crystals are calculated
     */
    static Kitchen at(double coldC) {
        return (batch, making) -> Frozen.in(coldC);
    }
}
