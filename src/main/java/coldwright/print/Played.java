package coldwright.print;

import coldwright.lesson.Lesson;
import coldwright.lesson.Part;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.handin.HandedStep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The snippets of a lesson, or what a learner made of them, played from top to bottom. */
public final class Played {
    private final Optional<HandIn> work;
    private final boolean solutions;
    private final Player player;
    private final List<String> above = new ArrayList<>();
    private final Map<Integer, Given> given = new HashMap<>();

    private Played(Optional<HandIn> work, boolean solutions, Player player) {
        this.work = work;
        this.solutions = solutions;
        this.player = player;
    }

    /** Whoever runs snippets. */
    @FunctionalInterface
    public interface Player {
        /**
         * Runs one and waits for it.
         *
         * @param above the snippets above that ran to their end, in order
         * @param snippet the snippet
         * @return what it gave; with no trouble if it ran to its end
         */
        Given play(List<String> above, String snippet);
    }

    /**
     * Plays a lesson as a handout wants it.
     *
     * @param lesson the lesson
     * @param wish a learner's snippets stand in place of the author's; the teacher's has what the
     *     solutions give too
     * @param player runs them
     * @return what each gave, by the line of its fence
     */
    public static Map<Integer, Given> of(Lesson lesson, Wish wish, Player player) {
        Played played = new Played(wish.work(), wish.edition() == Edition.ANSWERS, player);
        played.step("", lesson.opening());
        lesson.steps().forEach(step -> played.step(step.title(), step.parts()));
        return played.given;
    }

    private void step(String name, List<Part> parts) {
        Optional<HandedStep> handed = work.flatMap(one -> one.step(name));
        int index = 0;
        for (Part part : parts) {
            if (part instanceof Part.Snippet snippet) {
                int at = index++;
                String code = handed.flatMap(step -> step.text(at)).orElse(snippet.code());
                List<String> before = List.copyOf(above);
                Given one = player.play(before, code);
                if (one.trouble().isEmpty()) {
                    above.add(code);
                }
                boolean solve = solutions && !snippet.solution().isEmpty();
                given.put(
                        snippet.line(),
                        solve ? one.with(player.play(before, snippet.solution())) : one);
            }
        }
    }
}
