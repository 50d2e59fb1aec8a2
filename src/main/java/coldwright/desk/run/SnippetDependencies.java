package coldwright.desk.run;

import coldwright.source.JavaNames;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds from the texts whether a snippet's results are out of date after other snippets were
 * changed. It errs on the side of caution: a shared name that may have been changed counts.
 */
public final class SnippetDependencies {
    private static final int MOST_KEPT = 1_000;

    private final Map<String, JavaNames> read = new HashMap<>();

    /**
     * Whether another run might differ: the texts that ran and the current ones, from the top, the
     * snippet's own last.
     */
    public boolean outOfDate(List<String> ran, List<String> now) {
        int own = now.size() - 1;
        if (ran.size() != now.size() || !ran.get(own).equals(now.get(own))) {
            return true;
        }
        Set<String> loose = new HashSet<>();
        Set<String> changed = new HashSet<>();
        for (int i = 0; i < own; i++) {
            JavaNames names = names(now.get(i));
            loose.addAll(names.declared());
            loose.removeAll(names.firm());
            if (!ran.get(i).equals(now.get(i))) {
                changed.addAll(reach(names(ran.get(i)), loose));
                changed.addAll(reach(names, loose));
            } else if (shares(names, changed)) {
                changed.addAll(reach(names, loose));
            }
        }
        return shares(names(now.get(own)), changed);
    }

    /** The names whose values a snippet sets or may change. */
    private static Set<String> reach(JavaNames names, Set<String> loose) {
        Set<String> all = new HashSet<>(names.mentioned());
        all.retainAll(loose);
        all.addAll(names.declared());
        all.addAll(names.assigned());
        return all;
    }

    private static boolean shares(JavaNames names, Set<String> changed) {
        return names.mentioned().stream().anyMatch(changed::contains);
    }

    private JavaNames names(String text) {
        if (read.size() > MOST_KEPT) {
            read.clear();
        }
        return read.computeIfAbsent(text, JavaNames::of);
    }
}
