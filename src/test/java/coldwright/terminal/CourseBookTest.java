package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.KitItem;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.lesson.LessonPart;
import coldwright.lesson.LessonReader;
import coldwright.print.KitList;
import coldwright.science.mix.Allergen;
import coldwright.terminal.console.ExitCode;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The course book says of the lessons what the lessons say themselves. */
class CourseBookTest {
    private static final Path BOOK = Path.of("docs/course.md");
    private static final int LESSONS = 15;
    private static final int WORDS_A_MINUTE = 130;
    private static final int EXERCISE_MINUTES = 7;
    private static final Pattern MINUTES =
            Pattern.compile(
                    "(?m)^(\\d+)\\. \\[(.+?)]\\(\\.\\./(lessons/.+?)\\)\\. \\*\\*(\\d+) minutes:\\*\\* recall (\\d+), reading (\\d+), running (\\d+), discussion (\\d+)\\. Trial (\\d+)\\.$");
    private static final Pattern GRAMS = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s+g\\b");

    private static String book() throws IOException {
        return Files.readString(BOOK).replace("\r\n", "\n");
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("lessons"))) {
            return files.sorted().toList();
        }
    }

    private static List<Lesson> lessons() throws IOException {
        return files().stream().limit(LESSONS).map(LessonReader::read).toList();
    }

    private static List<MatchResult> rows() throws IOException {
        return MINUTES.matcher(book()).results().toList();
    }

    private static int number(MatchResult row, int group) {
        return Integer.parseInt(row.group(group));
    }

    private static int trialMinutes(Lesson lesson) {
        return (int)
                lesson.kit().stream()
                        .filter(one -> one.unit().equals("min"))
                        .mapToDouble(KitItem::amount)
                        .sum();
    }

    @Test
    void theMinutesAreThoseOfTheLessonsAndAddUp() throws IOException {
        List<MatchResult> rows = rows();
        List<Lesson> lessons = lessons();
        assertEquals(LESSONS, rows.size());
        for (int i = 0; i < LESSONS; i++) {
            MatchResult row = rows.get(i);
            Lesson lesson = lessons.get(i);
            String which = lesson.file();
            assertEquals(i + 1, number(row, 1), which);
            assertEquals(lesson.title(), row.group(2), which);
            assertEquals(files().get(i).toString().replace('\\', '/'), row.group(3), which);
            assertEquals(lesson.minutes(), row.group(4), which);
            assertEquals(trialMinutes(lesson), number(row, 9), which);
            assertEquals(
                    number(row, 4),
                    number(row, 5) + number(row, 6) + number(row, 7) + number(row, 8),
                    which);
        }
    }

    @Test
    void theMinutesAreCountedFromTheText() throws IOException {
        List<MatchResult> rows = rows();
        for (int i = 0; i < LESSONS; i++) {
            String text = Files.readString(files().get(i)).replaceAll("(?s)<!--.*?-->", "");
            String which = files().get(i).toString();
            double words = 0;
            int runs = 0;
            int predictions = 0;
            int exercise = 0;
            for (String step : text.split("(?m)^## ")) {
                if (!step.matches("(?s)(Kitchen trial|What this leaves|From earlier).*")) {
                    exercise = step.startsWith("Your turn") ? EXERCISE_MINUTES : exercise;
                    runs += count("(?m)^```java$", step);
                    predictions += count("(?m)^```forecast", step);
                    String read =
                            step.replaceAll("(?ms)^```(java|check|teacher)[^\\n]*\\n.*?^```", "");
                    words += count("\\S+", read);
                }
            }
            int recall = text.contains("## From earlier lessons") ? 3 : 0;
            MatchResult row = rows.get(i);
            assertEquals(recall, number(row, 5), which);
            assertEquals(words / WORDS_A_MINUTE, number(row, 6), 1, which);
            assertEquals(runs + exercise, number(row, 7), which);
            assertTrue(number(row, 8) >= 2 * predictions, which + ": discussion");
        }
    }

    private static int count(String pattern, String text) {
        return (int) Pattern.compile(pattern).matcher(text).results().count();
    }

    @Test
    void everyTimetableAddsUp() throws IOException {
        List<Lesson> lessons = lessons();
        int rows = 0;
        Matcher row =
                Pattern.compile("(?m)^- \\*\\*.+?:\\*\\* (.+)\\. Together (\\d+)\\.$")
                        .matcher(book());
        while (row.find()) {
            rows++;
            int sum = 0;
            Matcher item =
                    Pattern.compile("([^,]+?)(?: (\\d+))? \\((\\d+)\\)(?:, )?")
                            .matcher(row.group(1));
            while (item.find()) {
                int minutes = Integer.parseInt(item.group(3));
                sum += minutes;
                if (item.group(2) != null) {
                    Lesson lesson = lessons.get(Integer.parseInt(item.group(2)) - 1);
                    boolean trial = item.group(1).equals("trial");
                    assertTrue(trial || item.group(1).equals("lesson"), item.group());
                    int right = trial ? trialMinutes(lesson) : Integer.parseInt(lesson.minutes());
                    assertEquals(right, minutes, item.group());
                }
            }
            assertEquals(Integer.parseInt(row.group(2)), sum, row.group());
        }
        assertEquals(1 + 5 + 16, rows, "an evening, a week, a term");
    }

    @Test
    void everyLessonHasOutcomes() throws IOException {
        String book = book();
        List<Lesson> lessons = lessons();
        for (int i = 0; i < LESSONS; i++) {
            String start = "\n%d. *%s.* The learner can ".formatted(i + 1, lessons.get(i).title());
            assertTrue(book.contains(start), start);
        }
    }

    /** The map is drawn from pairs; each is among the lessons that the outcomes name. */
    @Test
    void theMapShowsWhatTheOutcomesNeed() throws IOException {
        String book = book();
        Matcher pair = Pattern.compile("\\{(\\d+), (\\d+)}").matcher(book);
        Set<String> drawn = new TreeSet<>();
        while (pair.find()) {
            drawn.add(pair.group(1) + " after " + pair.group(2));
        }
        Set<String> named = new TreeSet<>();
        Matcher line =
                Pattern.compile("(?m)^(\\d+)\\. \\*.*\\*\\*Before it:\\*\\* (.*)$").matcher(book);
        int lines = 0;
        while (line.find()) {
            lines++;
            Matcher number = Pattern.compile("\\d+").matcher(line.group(2));
            while (number.find()) {
                named.add(line.group(1) + " after " + number.group());
            }
        }
        assertEquals(LESSONS, lines);
        assertEquals(13, drawn.size());
        assertTrue(named.containsAll(drawn), drawn + " in " + named);
    }

    @Test
    void theBookIsPartOfTheProgram() {
        Lesson book = LessonFolder.in(Path.of("lessons")).find("course");
        assertEquals("The course", book.title());
        assertEquals(List.of(), book.faults());
    }

    @Test
    void theAllergensAreThoseOfTheKits() throws IOException {
        List<Lesson> lessons = lessons();
        for (int i = 0; i < LESSONS - 1; i++) {
            Set<Allergen> all = EnumSet.noneOf(Allergen.class);
            lessons.get(i).kit().forEach(one -> all.addAll(KitList.allergens(one)));
            Set<String> words = new TreeSet<>();
            all.forEach(
                    one ->
                            words.add(
                                    one == Allergen.WHEAT || one == Allergen.GLUTEN_CEREALS
                                            ? "gluten"
                                            : one.words()));
            Matcher line =
                    Pattern.compile("(?m)^- Trial %d: (.+)\\.$".formatted(i + 1)).matcher(book());
            assertTrue(line.find(), "trial " + (i + 1));
            Set<String> listed = new TreeSet<>(List.of(line.group(1).split(", ")));
            listed.removeIf(
                    one ->
                            one.equals("none")
                                    || one.contains("alcohol")
                                    || one.equals("for adults only"));
            assertEquals(words, listed, "trial " + (i + 1));
        }
    }

    @Test
    void whatTheKitsWeighOutTheTrialsWeighOutToo() throws IOException {
        int weighed = 0;
        for (Lesson lesson : lessons()) {
            String trial = lesson.text().replaceFirst("(?s)^.*?\n## Kitchen trial", "");
            Set<String> amounts =
                    GRAMS.matcher(trial.replaceAll("(?m)^kit:.*$", ""))
                            .results()
                            .map(one -> one.group(1))
                            .collect(Collectors.toSet());
            for (KitItem item : lesson.kit()) {
                if (item.unit().equals("g") && !item.roughly()) {
                    weighed++;
                    String amount = String.valueOf(item.amount()).replaceFirst("\\.0$", "");
                    assertTrue(amounts.contains(amount), lesson.file() + ": " + item);
                }
            }
        }
        assertTrue(weighed > 40, "amounts");
    }

    @Test
    void eachLessonBeginsWithThreeQuestionsFromEarlierOnes() throws IOException {
        List<Lesson> lessons = lessons();
        for (int n = 2; n < LESSONS; n++) {
            Lesson lesson = lessons.get(n - 1);
            List<LessonPart.Asked> asked =
                    LessonPart.only(LessonPart.Asked.class, lesson.steps().get(0).parts());
            assertEquals(3, asked.size(), lesson.file());
            String step = lesson.text().split("(?m)^## ")[1];
            List<Integer> from = new ArrayList<>();
            Matcher mark = Pattern.compile("\\(Lesson (\\d+)\\)").matcher(step);
            while (mark.find()) {
                from.add(Integer.parseInt(mark.group(1)));
            }
            assertEquals(3, from.size(), lesson.file());
            int number = n;
            assertTrue(from.stream().allMatch(one -> one < number), lesson.file() + from);
        }
    }

    @Test
    void theTestHasTwentyFourQuestionsAndAReasonForEachWrongChoice() {
        Lesson test = LessonReader.read(Path.of("lessons/16-test.md"));
        assertEquals(List.of(), test.faults());
        List<LessonPart.Asked> asked =
                test.steps().stream()
                        .flatMap(
                                step ->
                                        LessonPart.only(LessonPart.Asked.class, step.parts())
                                                .stream())
                        .toList();
        assertEquals(24, asked.size());
        for (LessonPart.Asked one : asked) {
            LessonPart.Question question = (LessonPart.Question) one;
            for (int i = 0; i < question.answer().choices().size(); i++) {
                boolean right = question.answer().right().contains(i);
                assertEquals(right, question.answer().reasons().get(i).isEmpty(), one.question());
            }
        }
    }

    @Test
    void everyNumberThatTheCalculatorSaysIsVerified() {
        TypedSession session = TypedSession.nobody();
        assertEquals(ExitCode.DONE, session.obey("check", BOOK.toString()), session.out());
        assertTrue(session.out().contains("42 "), session.out());
    }
}
