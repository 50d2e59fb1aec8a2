package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A lesson as Markdown that gives nothing away in any viewer: without notes for the teacher, right
 * answers, explanations, solutions and checks.
 */
public final class LearnerCopy {
    private static final Pattern FENCE = Pattern.compile(" {0,3}(`{3,}|~{3,})(.*)");

    private final List<String> copy = new ArrayList<>();

    private LearnerCopy() {}

    /** The copy of a lesson's whole text. */
    public static String of(String lesson) {
        LearnerCopy learners = new LearnerCopy();
        List<String> block = new ArrayList<>();
        String fence = "";
        for (String line : VerifiedNumberReader.without(lesson).split("\r\n|\n", -1)) {
            Matcher mark = FENCE.matcher(line);
            if (fence.isEmpty() && mark.matches()) {
                fence = mark.group(1);
                block.add(line);
            } else if (fence.isEmpty()) {
                learners.line(line);
            } else {
                block.add(line);
                if (line.strip().startsWith(fence) && mark.matches() && mark.group(2).isBlank()) {
                    learners.block(block);
                    block.clear();
                    fence = "";
                }
            }
        }
        block.forEach(learners::line);
        return String.join("\n", learners.copy);
    }

    /** Where a block was left out, no second empty line stays. */
    private void line(String line) {
        boolean second = copy.isEmpty() || copy.get(copy.size() - 1).isBlank();
        if (!line.isBlank() || !second) {
            copy.add(line);
        }
    }

    private void block(List<String> lines) {
        String first = lines.get(0);
        List<String> inside = lines.subList(1, lines.size() - 1);
        BlockKind kind = BlockKind.of(first.strip().replaceFirst("^[`~]+", "")).orElse(null);
        List<String> shown =
                kind == null
                        ? lines
                        : switch (kind) {
                            case PLAIN, JAVA -> lines;
                            case JAVA_GIVEN -> given(lines);
                            case PREDICTION -> asked(inside, false);
                            case QUESTION -> asked(inside, true);
                            case CHECK, TEACHER, JAVA_SOLUTION -> List.of();
                        };
        shown.forEach(copy::add);
    }

    private static List<String> given(List<String> lines) {
        List<String> plain = new ArrayList<>(lines);
        plain.set(0, lines.get(0).replaceFirst("java given", "java"));
        return plain;
    }

    private static List<String> asked(List<String> lines, boolean runless) {
        return PredictionReader.read(
                        String.join("\n", lines),
                        line -> 1,
                        new FaultList(""),
                        runless,
                        numbers -> numbers)
                .map(one -> asked(one, text(runless ? "copy.question" : "copy.predict")))
                .orElse(List.of());
    }

    private static List<String> asked(LessonPart.Asked asked, String heading) {
        String room =
                asked.answer()
                        .match(
                                choice -> choices(choice.choices(), one -> "- " + one),
                                several -> choices(several.choices(), one -> "- [ ] " + one),
                                amount -> text("copy.number", amount.unit()).strip(),
                                curve ->
                                        text(
                                                "copy.curve",
                                                scale(curve.level()),
                                                scale(curve.upright())));
        return List.of("**" + heading + "** " + asked.question(), "", room);
    }

    private static String choices(List<String> choices, Function<String, String> line) {
        return choices.stream().map(line).collect(Collectors.joining("\n"));
    }

    private static String scale(ExpectedAnswer.Scale scale) {
        return text("copy.scale", scale.label(), scale.from(), scale.to(), scale.unit()).strip();
    }
}
