package coldwright.workbook.work;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPart;
import coldwright.lesson.LessonStep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The names of a lesson's steps in its work: their titles. */
public final class StepNames {
    /** The name of the part before the first step. */
    public static final String OPENING = "";

    private StepNames() {}

    /** The names of a lesson's steps without the opening; a repeated title gets {@code (2)}. */
    public static List<String> of(Lesson lesson) {
        Map<String, Integer> seen = new HashMap<>();
        List<String> names = new ArrayList<>();
        for (LessonStep step : lesson.steps()) {
            int times = seen.merge(step.title(), 1, Integer::sum);
            String name = times == 1 ? step.title() : step.title() + " (" + times + ")";
            while (names.contains(name) || name.equals(OPENING)) {
                name += " (again)";
            }
            names.add(name);
        }
        return List.copyOf(names);
    }

    /** A lesson's parts by step, in order; the opening's are under {@link #OPENING}. */
    public static Map<String, List<LessonPart>> parts(Lesson lesson) {
        Map<String, List<LessonPart>> parts = new LinkedHashMap<>();
        parts.put(OPENING, lesson.opening());
        List<String> names = of(lesson);
        for (int i = 0; i < names.size(); i++) {
            parts.put(names.get(i), lesson.steps().get(i).parts());
        }
        return parts;
    }
}
