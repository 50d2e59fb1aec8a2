package coldwright.science.standards;

import coldwright.science.mix.Mix;

import java.util.ArrayList;
import java.util.List;

/** Product names that a mix may bear, by the rules of three places. */
public final class ProductNames {
    private ProductNames() {}

    /**
     * The verdicts on a mix without air.
     *
     * @return one verdict for each name that is checked
     */
    public static List<NameVerdict> of(Mix mix) {
        return of(mix, 0);
    }

    /**
     * The verdicts on a mix with air, which counts for the weight by volume in the United States.
     *
     * @param overrunPercent volume of air per volume of mix, %, 0 to 300
     * @return one verdict for each name that is checked
     */
    public static List<NameVerdict> of(Mix mix, double overrunPercent) {
        List<NameVerdict> all = new ArrayList<>();
        all.addAll(UsProductNames.verdicts(mix, overrunPercent));
        all.addAll(UkProductNames.verdicts(mix));
        all.addAll(GermanProductNames.verdicts(mix));
        return List.copyOf(all);
    }

    /**
     * The names that the mix may bear.
     *
     * @return the allowed verdicts only
     */
    public static List<NameVerdict> allowed(Mix mix) {
        return of(mix).stream().filter(NameVerdict::allowed).toList();
    }
}
