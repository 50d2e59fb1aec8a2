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
import java.util.stream.Collectors;

/** The results of a class as a table: a row for each hand-in, or for each step. */
final class MarkTable {
    /** Starts a UTF-8 file so that spreadsheets read its characters correctly. */
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private static final int WIDEST = 24;

    private MarkTable() {}

    static List<String> lines(List<MarkedHandIn> all, int width) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(text("table.heads").split("; ")));
        for (MarkedHandIn one : all) {
            boolean tried = !one.steps().isEmpty();
            rows.add(
                    List.of(
                            cut(one.learner().isEmpty() ? "?" : one.learner()),
                            cut(
                                    one.lesson().isEmpty()
                                            ? one.file().replaceFirst("^.*[/\\\\]", "")
                                            : one.lesson()),
                            tried
                                    ? one.steps().stream().filter(MarkedHandInStep::done).count()
                                            + ""
                                    : "-",
                            of(
                                    tried,
                                    one.sum(MarkedHandInStep::ran),
                                    one.sum(MarkedHandInStep::snippets)),
                            of(
                                    tried,
                                    one.sum(MarkedHandInStep::passed),
                                    one.sum(MarkedHandInStep::checks)),
                            of(
                                    tried,
                                    one.predictions(PredictionOutcome.YES),
                                    one.predictionsMade()),
                            one.notes().isEmpty() ? "" : Integer.toString(one.notes().size())));
        }
        List<String> lines = new ArrayList<>(List.of(""));
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                int at = i;
                int wide = rows.stream().mapToInt(one -> length(one.get(at))).max().orElse(0);
                line.append(row.get(i)).append(" ".repeat(wide - length(row.get(i)) + 2));
            }
            lines.add(line.toString().stripTrailing());
        }
        lines.addAll(PlainProse.wrap(text("table.legend"), width));
        lines.add("");
        return lines;
    }

    private static String of(boolean tried, long some, long all) {
        return tried ? text("table.of", some, all) : "-";
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    private static String cut(String text) {
        return length(text) <= WIDEST
                ? text
                : text.substring(0, text.offsetByCodePoints(0, WIDEST - 1)) + "…";
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
                    .filter(MarkedHandInStep::hasContent)
                    .forEach(s -> rows.add(row(one, s)));
        }
        write(steps, rows, "table.step-heads");
        return List.of(file, steps);
    }

    private static List<Object> row(MarkedHandIn one) {
        return List.of(
                one.file(),
                one.learner(),
                one.lesson(),
                one.date(),
                text(one.passes() ? "table.yes" : "table.no"),
                one.steps().stream().filter(MarkedHandInStep::done).count(),
                one.sum(MarkedHandInStep::ran),
                one.sum(MarkedHandInStep::snippets),
                one.sum(MarkedHandInStep::passed),
                one.sum(MarkedHandInStep::checks),
                one.predictions(PredictionOutcome.YES),
                one.predictions(PredictionOutcome.NO),
                one.predictions().size(),
                one.steps().stream()
                        .filter(step -> !step.passes())
                        .map(MarkedHandInStep::title)
                        .collect(Collectors.joining("; ")),
                String.join("; ", one.notes()));
    }

    private static List<Object> row(MarkedHandIn one, MarkedHandInStep step) {
        return List.of(
                one.file(),
                one.learner(),
                one.lesson(),
                step.title(),
                text(step.done() ? "table.yes" : "table.no"),
                step.ran(),
                step.snippets(),
                step.passed(),
                step.checks(),
                step.predictions().stream()
                        .map(MarkedPrediction::brief)
                        .collect(Collectors.joining("; ")),
                String.join("; ", step.troubles()));
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
