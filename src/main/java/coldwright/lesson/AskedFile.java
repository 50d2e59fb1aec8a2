package coldwright.lesson;

import coldwright.text.TextFile;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.lang.model.SourceVersion;

/**
 * The file that a lesson asks for with {@code asks: read NAME}. The program reads it, and a given
 * snippet declares a string variable that has its text: the snippets themselves can't read files.
 */
final class AskedFile {
    /** Maximum size, bytes: as much as a snippet may have, with room for escapes. */
    static final int MOST_BYTES = 40_000;

    /** Java's limit for a string in a class file is 65,535 bytes. */
    private static final int PART = 10_000;

    private static final Pattern ASKS =
            Pattern.compile("read\\s+([\\p{L}\\p{N}][\\p{L}\\p{N} ._-]*)");
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}]+");

    private AskedFile() {}

    static boolean isMeantBy(String asks) {
        return ASKS.matcher(asks).matches();
    }

    /** Finds a file beside a lesson; follows no link. */
    static Function<String, TextFile> beside(Path lesson) {
        return name -> {
            Path file = lesson.resolveSibling(name);
            return Files.isSymbolicLink(file) || Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)
                    ? TextFile.missing(FaultList.text("asks.link"))
                    : TextFile.read(file, MOST_BYTES);
        };
    }

    /**
     * The snippet that declares the text of the file that a head asks for on a line, found by its
     * name; nothing if it asks for none.
     */
    static List<LessonPart> snippet(
            String asks, int line, Function<String, TextFile> files, FaultList faults) {
        Matcher name = ASKS.matcher(asks);
        if (!name.matches()) {
            return List.of();
        }
        TextFile file = files.apply(name.group(1));
        file.faults()
                .forEach(fault -> faults.add(line, "\"" + name.group(1) + "\": " + fault.words()));
        String code = "String %s = %s;".formatted(variable(name.group(1)), literal(file));
        return List.of(new LessonPart.Snippet(line, code, true, List.of()));
    }

    /** {@code oven-temperatures.csv} gives {@code ovenTemperatures}. */
    static String variable(String fileName) {
        StringBuilder variable = new StringBuilder();
        Matcher part = NAME.matcher(fileName.replaceFirst("\\.[^.]*$", ""));
        while (part.find()) {
            String word = part.group();
            variable.append(
                    variable.length() == 0
                            ? word
                            : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        String name = variable.toString();
        return SourceVersion.isName(name)
                ? name
                : "text" + name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    private static String literal(TextFile file) {
        String text = file.text().orElse("").replace("\r\n", "\n");
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < text.length(); i += PART) {
            parts.add(quoted(text.substring(i, Math.min(text.length(), i + PART))));
        }
        return parts.size() > 1
                ? "String.join(\"\", " + String.join(",\n", parts) + ")"
                : String.join("", parts.isEmpty() ? List.of("\"\"") : parts);
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (char c : text.toCharArray()) {
            switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                case '\r' -> quoted.append("\\r");
                default -> quoted.append(c < ' ' ? ' ' : c);
            }
        }
        return quoted.append('"').toString();
    }
}
