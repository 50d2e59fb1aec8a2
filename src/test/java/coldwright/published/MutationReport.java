package coldwright.published;

import coldwright.science.Require;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

/**
 * Writes {@code docs/mutation.md}: how many changes to the code of each package its tests notice.
 *
 * <p>Arguments: the folder of the runs ({@code target/mutation}, one folder for each package, each
 * with a {@code mutations.xml}) and the page to write. Packages without a run keep the row that the
 * page has of them. What survives and matters is written by hand in {@code mutation-survivors.md}.
 */
public final class MutationReport {
    private static final String CLOSING = "/mutation-survivors.md";
    private static final String ROW = "| `";

    private MutationReport() {}

    /**
     * Writes the page.
     *
     * @param args folder of runs, page to write
     * @throws IOException if a file cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Path page = Path.of(args[1]);
        Map<String, String> rows = new TreeMap<>();
        if (Files.exists(page)) {
            Files.readAllLines(page).stream()
                    .filter(line -> line.startsWith(ROW))
                    .forEach(line -> rows.put(line.split("`", -1)[1], line));
        }
        try (Stream<Path> runs = Files.list(folder)) {
            for (Path run : runs.sorted().toList()) {
                Path xml = run.resolve("mutations.xml");
                if (Files.exists(xml)) {
                    String name = run.getFileName().toString();
                    rows.put(name, Count.of(xml).row(name));
                }
            }
        }
        Files.writeString(page, page(rows));
    }

    static String page(Map<String, String> rows) throws IOException {
        StringBuilder text = new StringBuilder();
        text.append(
                """
                # What the tests notice

                Generated (`mvn -q test-compile pitest:mutationCoverage exec:exec@mutation-page -Pmutation
                -Dmutate=freezing`, one package a run), not typed. PIT changes the code of a package in one
                place at a time, such as + to − or < to ≤, and runs the tests of that package. A change that
                no test notices has survived. Changes that let a loop run forever count as noticed.

                | package of `coldwright.science` | changes | noticed | in lines that tests reach |
                |---|---:|---:|---:|
                """);
        rows.values().forEach(row -> text.append(row).append('\n'));
        try (InputStream in = MutationReport.class.getResourceAsStream(CLOSING)) {
            return text.append('\n')
                    .append(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .toString();
        }
    }

    /** Changes of one package: all, noticed, and in lines that no test reaches. */
    record Count(int all, int noticed, int unreached) {
        static Count of(Path xml) throws IOException {
            try {
                Document document =
                        DocumentBuilderFactory.newInstance()
                                .newDocumentBuilder()
                                .parse(xml.toFile());
                NodeList changes = document.getElementsByTagName("mutation");
                int noticed = 0;
                int unreached = 0;
                for (int i = 0; i < changes.getLength(); i++) {
                    Element change = (Element) changes.item(i);
                    noticed += Boolean.parseBoolean(change.getAttribute("detected")) ? 1 : 0;
                    unreached += change.getAttribute("status").equals("NO_COVERAGE") ? 1 : 0;
                }
                return new Count(changes.getLength(), noticed, unreached);
            } catch (ParserConfigurationException | SAXException e) {
                throw new IOException(xml + " is not a list of mutations", e);
            }
        }

        String row(String name) {
            return "| `%s` | %d | %s %% | %s %% |"
                    .formatted(name, all, percent(noticed, all), percent(noticed, all - unreached));
        }

        private static String percent(int part, int all) {
            return all == 0 ? "–" : Require.format(Math.rint(100.0 * part / all));
        }
    }
}
