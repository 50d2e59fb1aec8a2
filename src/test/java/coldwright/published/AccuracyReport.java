package coldwright.published;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Collates what the tests wrote down ({@link Ledger}) into {@code docs/accuracy.md}.
 *
 * <p>Arguments: the folder of figures and the page to write; {@code target/accuracy} and {@code
 * docs/accuracy.md} if left out. It refuses to write a page with holes: every published table must
 * have been compared.
 */
public final class AccuracyReport {
    private static final String CLOSING = "/published/not-tested.md";

    private final List<Comparison> made;

    AccuracyReport(List<Comparison> made) {
        this.made = List.copyOf(made);
    }

    /**
     * Writes the page.
     *
     * @param args folder of figures, page to write
     * @throws IOException if a file cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        Path folder = args.length > 0 ? Path.of(args[0]) : Ledger.FOLDER;
        Path page = Path.of(args.length > 1 ? args[1] : "docs/accuracy.md");
        AccuracyReport report = new AccuracyReport(read(folder));
        Set<String> missing = new TreeSet<>(PublishedTable.names());
        missing.removeAll(report.tables());
        if (!missing.isEmpty()) {
            throw new IllegalStateException(
                    "no figures of %s in %s; run all the tests first"
                            .formatted(String.join(", ", missing), folder));
        }
        List<KnownDeviation> gone = new ArrayList<>(KnownDeviation.all());
        report.made.forEach(c -> KnownDeviation.of(c).ifPresent(gone::remove));
        if (!gone.isEmpty()) {
            throw new IllegalStateException("listed as deviating, but never compared: " + gone);
        }
        Files.writeString(page, report.page() + closing());
    }

    private static List<Comparison> read(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new IllegalStateException(folder + " is not there; run the tests first");
        }
        List<Comparison> made = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".tsv")).sorted().toList()) {
                Files.readAllLines(file).forEach(line -> made.add(Comparison.read(line)));
            }
        }
        return made;
    }

    private static String closing() throws IOException {
        try (InputStream in = AccuracyReport.class.getResourceAsStream(CLOSING)) {
            if (in == null) {
                throw new IllegalStateException("no " + CLOSING);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    Set<String> tables() {
        return made.stream().map(Comparison::table).collect(Collectors.toSet());
    }

    String page() {
        StringBuilder page = new StringBuilder();
        page.append(
                """
                # How close the results are to published values

                Generated from the comparisons that the tests make (`mvn -q test exec:exec@accuracy-page
                -Paccuracy`), not typed. Each
                quantity of each published table has one line. It shows how many rows judge the quantity, how many
                were used to set a constant (those never count as checks), and the largest error by size. Against a
                published range the error is the gap to it. Each table's header under
                `src/test/resources/published/` explains how it came here. Where no uncertainty of a source is
                known, the tolerance is what the project requires. What misses it is a known deviation, pinned by
                its test.

                """);
        page.append(kinds());
        page.append(goals());
        page.append(deviations());
        Set<String> rooms = new TreeSet<>();
        made.forEach(comparison -> rooms.add(comparison.room()));
        rooms.forEach(room -> page.append(room(room)));
        return page.toString();
    }

    /**
     * How many checks of each kind: a measurement met is worth more than a constant typed twice.
     */
    private String kinds() {
        StringBuilder text = new StringBuilder("## What the checks are worth\n\n");
        text.append("| kind | tables | checks | of these deviating | fitted rows | worth |\n");
        text.append("|---|---:|---:|---:|---:|---|\n");
        for (Kind kind : Kind.values()) {
            List<Comparison> here =
                    made.stream()
                            .filter(c -> PublishedTable.read(c.table()).kind() == kind)
                            .toList();
            List<Comparison> checks = here.stream().filter(c -> !c.fitted()).toList();
            text.append(
                    "| %s | %d | %d | %d | %d | %s |\n"
                            .formatted(
                                    kind.words(),
                                    here.stream().map(Comparison::table).distinct().count(),
                                    checks.size(),
                                    checks.stream().filter(c -> !c.within()).count(),
                                    here.size() - checks.size(),
                                    kind.worth()));
        }
        return text.append('\n').toString();
    }

    private String deviations() {
        StringBuilder text = new StringBuilder("## Known deviations\n\n");
        text.append(
                "| table | quantity | where | published | off by | allowed | what is known |\n");
        text.append("|---|---|---|---:|---:|---:|---|\n");
        made.stream()
                .filter(c -> KnownDeviation.of(c).isPresent())
                .sorted(Comparator.comparing(Comparison::table))
                .forEach(c -> text.append(deviation(c, KnownDeviation.of(c).orElseThrow())));
        return text.append('\n').toString();
    }

    private static String deviation(Comparison c, KnownDeviation known) {
        String published =
                c.least() == c.most()
                        ? Figures.plain(c.least())
                        : "%s to %s".formatted(Figures.plain(c.least()), Figures.plain(c.most()));
        return "| `%s` | %s | %s | %s | %s | %s: %s | %s |\n"
                .formatted(
                        c.table(),
                        c.quantity(),
                        c.where(),
                        (published + " " + c.unit()).strip(),
                        (Figures.short3(c.error()) + " " + c.unit()).strip(),
                        (Figures.short3(c.tolerance().size()) + " " + c.measuredUnit()).strip(),
                        c.tolerance().reason(),
                        known.why());
    }

    private String goals() {
        StringBuilder text = new StringBuilder("## Goals\n\n");
        text.append("| goal | allowed | checks | largest error | where | verdict |\n");
        text.append("|---|---:|---:|---:|---|---|\n");
        for (Goal goal : Goal.values()) {
            List<Comparison> judged =
                    made.stream()
                            .filter(c -> !c.fitted())
                            .filter(c -> c.tolerance().goal().equals(java.util.Optional.of(goal)))
                            .toList();
            text.append(goalLine(goal, judged));
        }
        return text.append('\n').toString();
    }

    private static String goalLine(Goal goal, List<Comparison> judged) {
        String allowed = Figures.short3(goal.size()) + " " + goal.unit();
        if (judged.isEmpty()) {
            return "| %s | %s | 0 | – | – | not measured |\n".formatted(goal.words(), allowed);
        }
        Comparison worst = Group.worst(judged, c -> goalError(goal, c));
        long missed = judged.stream().filter(c -> goalError(goal, c) > goal.size()).count();
        return "| %s | %s | %d | %s | `%s`, %s | %s |\n"
                .formatted(
                        goal.words(),
                        allowed,
                        judged.size(),
                        Figures.short2(goalError(goal, worst)) + " " + goal.unit(),
                        worst.table(),
                        worst.where(),
                        missed == 0
                                ? "met"
                                : "**missed** by %d of %d: %s"
                                        .formatted(
                                                missed,
                                                judged.size(),
                                                KnownDeviation.of(worst)
                                                        .map(KnownDeviation::why)
                                                        .orElse(worst.tolerance().reason())));
    }

    private static double goalError(Goal goal, Comparison c) {
        return goal.isShare() ? 100 * Math.abs(c.error() / c.published()) : Math.abs(c.error());
    }

    private String room(String room) {
        List<Comparison> here = made.stream().filter(c -> c.room().equals(room)).toList();
        StringBuilder text = new StringBuilder("## " + room + "\n\n");
        text.append(
                "| table | quantity | checks | fitted | from | to | largest error | where | allowed |\n");
        text.append("|---|---|---:|---:|---:|---:|---:|---|---|\n");
        Group.of(here).forEach(group -> text.append(group.line()));
        text.append('\n');
        here.stream()
                .map(Comparison::table)
                .distinct()
                .sorted()
                .forEach(name -> text.append(source(PublishedTable.read(name))));
        return text.append('\n').toString();
    }

    private static String source(PublishedTable table) {
        long leftOut =
                table.rows().stream()
                        .map(row -> row.values().getOrDefault("use", "check"))
                        .filter(use -> !use.equals("check") && !use.equals("fit"))
                        .count();
        return "- `%s`: %s%s\n"
                .formatted(
                        table.name(),
                        table.citation(),
                        leftOut == 0 ? "" : " (%d doubtful rows left out)".formatted(leftOut));
    }
}
