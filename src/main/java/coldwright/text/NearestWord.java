package coldwright.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that somebody most likely meant to type. */
public final class NearestWord {
    private NearestWord() {}

    /**
     * The known word with the fewest typing errors, if it is near enough; an error is a letter too
     * many, missing or wrong, or two swapped.
     */
    public static Optional<String> to(String typed, Collection<String> known) {
        String low = typed.toLowerCase(Locale.ROOT);
        return known.stream()
                .filter(word -> isNear(low, word.toLowerCase(Locale.ROOT)))
                .min(Comparator.comparingInt(word -> typos(low, word.toLowerCase(Locale.ROOT))));
    }

    private static boolean isNear(String typed, String word) {
        int allowed = Math.max(1, Math.min(typed.length(), word.length()) / 3);
        return Math.abs(typed.length() - word.length()) <= allowed && typos(typed, word) <= allowed;
    }

    /** The number of typing errors between two words, case-sensitive; at most the longer length. */
    public static int typos(String a, String b) {
        int[][] table = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                table[i][j] = i == 0 || j == 0 ? i + j : cheapest(table, a, b, i, j);
            }
        }
        return table[a.length()][b.length()];
    }

    private static int cheapest(int[][] table, String a, String b, int i, int j) {
        int wrong = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best =
                Math.min(
                        table[i - 1][j - 1] + wrong,
                        Math.min(table[i - 1][j], table[i][j - 1]) + 1);
        boolean swapped =
                i > 1
                        && j > 1
                        && a.charAt(i - 1) == b.charAt(j - 2)
                        && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, table[i - 2][j - 2] + 1) : best;
    }
}
