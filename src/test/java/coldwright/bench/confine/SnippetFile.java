package coldwright.bench.confine;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A test file of snippets. A line that begins with {@code >>} says what is expected of the lines
 * after it; one that begins with {@code # } is a comment.
 *
 * @param line where it begins
 * @param expected what is expected
 * @param code the snippet
 */
record SnippetFile(int line, String expected, String code) {
    private static final Path FOLDER = Path.of("src/test/resources/confine");

    static List<SnippetFile> read(String file) throws IOException {
        List<SnippetFile> all = new ArrayList<>();
        List<String> lines = Files.readAllLines(FOLDER.resolve(file));
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.startsWith(">>")) {
                all.add(new SnippetFile(i + 1, line.substring(2).strip(), ""));
            } else if (!line.startsWith("# ") && !line.isBlank()) {
                SnippetFile last = all.remove(all.size() - 1);
                all.add(new SnippetFile(last.line(), last.expected(), last.code() + line + "\n"));
            }
        }
        return all;
    }

    @Override
    public String toString() {
        return line + " " + expected + ": " + code.strip();
    }
}
