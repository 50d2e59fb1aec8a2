package coldwright.terminal.marking;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.terminal.console.PlainProse;
import coldwright.text.WholeFile;
import coldwright.workbook.handin.PredictionOutcome;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The results of a class as a table: a row for each hand-in, or for each step. */
final class MarkTable {
    /** Starts a UTF-8 file so that spreadsheets read its characters correctly. */
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private static final int WIDEST = 24;

    private MarkTable() {}

    static List<String> lines(List<MarkedHandIn> all, int width) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(text("table.heads").split("; ")));
        all.forEach(one -> rows.add(cells(one)));
        List<String> lines = new ArrayList<>(List.of(""));
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size() - 1; i++) {
                int at = i;
                int wide = rows.stream().mapToInt(one -> length(one.get(at))).max().orElse(0);
                line.append(row.get(i)).append(" ".repeat(wide - length(row.get(i)) + 2));
            }
            int room = Math.max(WIDEST, width - length(line.toString()));
            lines.add((line + cut(row.get(row.size() - 1), room)).stripTrailing());
        }
        lines.addAll(PlainProse.wrap(text("table.legend"), width));
        lines.add("");
        return lines;
    }

    /** What comes last may be long: the first thing that is worth a look, after their number. */
    private static List<String> cells(MarkedHandIn one) {
        boolean tried = !one.steps().isEmpty();
        String lesson =
                one.lesson().isEmpty() ? one.file().replaceFirst("^.*[/\\\\]", "") : one.lesson();
        List<MarkedPrediction> predictions = predictions(one);
        List<String> look = one.worthALook();
        return List.of(
                cut(one.learner().isEmpty() ? "?" : one.learner(), WIDEST),
                cut(lesson, WIDEST),
                of(tried, one.sum(step -> step.solved), one.sum(step -> step.exercises)),
                of(tried, count(predictions, MarkedPrediction::made), predictions.size()),
                look.isEmpty() ? "" : text("table.look", look.size(), look.get(0)));
    }

    private static List<MarkedPrediction> predictions(MarkedHandIn one) {
        return one.predictions().stream().filter(MarkedPrediction::predicts).toList();
    }

    private static long count(List<MarkedPrediction> all, Predicate<MarkedPrediction> such) {
        return all.stream().filter(such).count();
    }

    private static String of(boolean tried, long some, long all) {
        return tried ? text("table.of", some, all) : "-";
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    private static String cut(String text, int most) {
        return length(text) <= most
                ? text
                : text.substring(0, text.offsetByCodePoints(0, most - 1)) + "…";
    }

    /**
     * Writes two tables and returns their files: a row for each hand-in and, with {@code -steps} in
     * the file name, a row for each step.
     */
    static List<Path> write(List<MarkedHandIn> all, Path file) throws IOException {
        String name = file.getFileName().toString();
        String stem = name.replaceFirst("(?i)\\.csv$", "");
        Path steps = file.resolveSibling(stem + "-steps" + name.substring(stem.length()));
        write(file, all.stream().map(MarkTable::row).toList(), "table.file-heads");
        List<List<Object>> rows = new ArrayList<>();
        for (MarkedHandIn one : all) {
            one.steps().stream()
                    .filter(step -> !step.lines().isEmpty())
                    .forEach(step -> rows.add(row(one, step)));
        }
        write(steps, rows, "table.step-heads");
        return List.of(file, steps);
    }

    private static List<Object> row(MarkedHandIn one) {
        List<MarkedPrediction> predictions = predictions(one);
        return List.of(
                one.file(),
                one.learner(),
                one.lesson(),
                one.date(),
                one.sum(step -> step.solved),
                one.sum(step -> step.exercises),
                count(predictions, MarkedPrediction::made),
                predictions.size(),
                String.join("; ", one.worthALook()),
                text(one.passes() ? "table.yes" : "table.no"),
                one.sum(step -> step.done ? 1 : 0),
                one.sum(step -> step.ran),
                one.sum(step -> step.snippets),
                one.sum(step -> step.passed),
                one.sum(step -> step.checks),
                count(predictions, all -> all.outcome() == PredictionOutcome.YES),
                count(predictions, all -> all.outcome() == PredictionOutcome.NO));
    }

    private static List<Object> row(MarkedHandIn one, MarkedStep step) {
        return List.of(
                one.file(),
                one.learner(),
                one.lesson(),
                step.title,
                text(step.done ? "table.yes" : "table.no"),
                step.solved,
                step.exercises,
                step.ran,
                step.snippets,
                step.passed,
                step.checks,
                String.join("; ", step.predictions.stream().map(MarkedPrediction::brief).toList()),
                String.join("; ", step.troubles));
    }

    private static void write(Path file, List<List<Object>> rows, String heads) throws IOException {
        StringBuilder text = new StringBuilder().append(BYTE_ORDER_MARK);
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(List.of(text(heads).split("; ")));
            for (List<Object> row : rows) {
                printer.printRecord(row.stream().map(MarkTable::harmless).toList());
            }
        }
        WholeFile.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** Text that a spreadsheet would take for a formula gets an apostrophe in front. */
    private static Object harmless(Object value) {
        return value instanceof String text && text.matches("(?s)\\s*[=+\\-@＝＋－＠|].*")
                ? "'" + text
                : value;
    }
}
