package coldwright.print;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPart;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.handin.HandedInStep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The snippets of a lesson, or what a learner made of them, played from top to bottom. */
public final class PlayedLesson {
    private final Optional<HandIn> work;
    private final boolean solutions;
    private final SnippetPlayer snippetPlayer;
    private final List<String> above = new ArrayList<>();
    private final Map<Integer, SnippetOutput> given = new HashMap<>();

    private PlayedLesson(Optional<HandIn> work, boolean solutions, SnippetPlayer snippetPlayer) {
        this.work = work;
        this.solutions = solutions;
        this.snippetPlayer = snippetPlayer;
    }

    /** Whoever runs snippets. */
    @FunctionalInterface
    public interface SnippetPlayer {
        /**
         * Runs one and waits for it.
         *
         * @param above the snippets above that ran to their end, in order
         * @param snippet the snippet
         * @return what it gave; with no trouble if it ran to its end
         */
        SnippetOutput play(List<String> above, String snippet);
    }

    /**
     * Plays a lesson as a handout wants it.
     *
     * @param lesson the lesson
     * @param handoutOptions a learner's snippets stand in place of the author's; the teacher's has
     *     what the solutions give too
     * @param snippetPlayer runs them
     * @return what each gave, by the line of its fence
     */
    public static Map<Integer, SnippetOutput> of(
            Lesson lesson, HandoutOptions handoutOptions, SnippetPlayer snippetPlayer) {
        PlayedLesson playedLesson =
                new PlayedLesson(
                        handoutOptions.work(),
                        handoutOptions.edition() == HandoutEdition.ANSWERS,
                        snippetPlayer);
        playedLesson.step("", lesson.opening());
        lesson.steps().forEach(step -> playedLesson.step(step.title(), step.parts()));
        return playedLesson.given;
    }

    private void step(String name, List<LessonPart> parts) {
        Optional<HandedInStep> handed = work.flatMap(one -> one.step(name));
        int index = 0;
        for (LessonPart part : parts) {
            if (part instanceof LessonPart.Snippet snippet) {
                int at = index++;
                String code = handed.flatMap(step -> step.text(at)).orElse(snippet.code());
                List<String> before = List.copyOf(above);
                SnippetOutput one = snippetPlayer.play(before, code);
                if (one.trouble().isEmpty()) {
                    above.add(code);
                }
                boolean solve = solutions && !snippet.solution().isEmpty();
                given.put(
                        snippet.line(),
                        solve ? one.with(snippetPlayer.play(before, snippet.solution())) : one);
            }
        }
    }
}
