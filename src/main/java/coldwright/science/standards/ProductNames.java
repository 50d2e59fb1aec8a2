package coldwright.science.standards;

import coldwright.science.mix.Mix;

import java.util.ArrayList;
import java.util.List;

/** Product names that a mix may bear, by the rules of three places. */
public final class ProductNames {
    private ProductNames() {}

    /** {@return the verdicts on a mix without air, one for each name that is checked} */
    public static List<NameVerdict> of(Mix mix) {
        return of(mix, 0);
    }

    /**
     * {@return the verdicts on a mix with air, which counts for the weight by volume in the United
     * States, one for each name that is checked}
     *
     * @param overrunPercent volume of air per volume of mix, %, 0 to 300
     */
    public static List<NameVerdict> of(Mix mix, double overrunPercent) {
        List<NameVerdict> all = new ArrayList<>();
        all.addAll(UsProductNames.verdicts(mix, overrunPercent));
        all.addAll(UkProductNames.verdicts(mix));
        all.addAll(GermanProductNames.verdicts(mix));
        return List.copyOf(all);
    }

    /** {@return the names that the mix may bear: the allowed verdicts only} */
    public static List<NameVerdict> allowed(Mix mix) {
        return of(mix).stream().filter(NameVerdict::allowed).toList();
    }
}
