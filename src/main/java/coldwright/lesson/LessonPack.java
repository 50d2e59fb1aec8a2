package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import coldwright.text.TextFile;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;

/**
 * Several lessons in one folder or zip file. A zip file is read in memory and never unpacked to
 * disk; a pack with malicious paths or sizes is rejected as a whole.
 */
public final class LessonPack {
    /** The extension of a pack. */
    public static final String ENDING = ".zip";

    static final int MOST_ENTRIES = 1000;
    static final long MOST_BYTES = 20_000_000;

    private final String name;
    private final Map<String, byte[]> files = new TreeMap<>();
    private final Set<String> seen = new HashSet<>();
    private long bytesSoFar;

    private LessonPack(String name) {
        this.name = name;
    }

    /** Whether {@link #of} can be tried on a path: a folder, or a name like a zip file's. */
    public static boolean isOne(Path path) {
        return path.toString().toLowerCase(Locale.ROOT).endsWith(ENDING) || Files.isDirectory(path);
    }

    /**
     * Reads all lessons of a zip file, or of a folder itself, in the order of their names.
     *
     * @throws IllegalArgumentException as {@link #read}; one sentence
     */
    public static List<Lesson> of(Path path) {
        return Files.isDirectory(path) ? in(path) : read(path);
    }

    private static List<Lesson> in(Path folder) {
        List<String> names = LessonReader.lessonsIn(folder);
        if (names.isEmpty()) {
            String why = Files.isReadable(folder) ? "pack.none" : "pack.not-allowed";
            throw new IllegalArgumentException(text(why, folder));
        }
        return names.stream().map(name -> LessonReader.read(folder.resolve(name))).toList();
    }

    /**
     * Reads all lessons of a zip file, also in its folders, in the order of their names.
     *
     * @throws IllegalArgumentException if it can't be read, contains no lesson, more than {@value
     *     #MOST_ENTRIES} entries, more than {@value #MOST_BYTES} bytes unpacked, or a name or link
     *     that leads out of it; one sentence
     */
    public static List<Lesson> read(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return read(file.toString(), in);
        } catch (IOException e) {
            throw new IllegalArgumentException(text("pack.not-allowed", file), e);
        }
    }

    static List<Lesson> read(String name, InputStream in) {
        LessonPack pack = new LessonPack(name);
        try {
            byte[] all = in.readNBytes((int) MOST_BYTES + 1);
            if (all.length > MOST_BYTES) {
                throw pack.tooLarge();
            }
            pack.refuseLinks(all);
            pack.unpack(new ZipInputStream(new ByteArrayInputStream(all), StandardCharsets.UTF_8));
        } catch (ZipException e) {
            throw new IllegalArgumentException(text("pack.damaged", name), e);
        } catch (IOException e) {
            throw new IllegalArgumentException(text("pack.early", name), e);
        }
        List<Lesson> lessons =
                pack.files.keySet().stream()
                        .filter(LessonPack::isLesson)
                        .map(pack::lesson)
                        .toList();
        if (lessons.isEmpty()) {
            throw new IllegalArgumentException(text("pack.none", name));
        }
        return lessons;
    }

    private static boolean isLesson(String path) {
        return path.toLowerCase(Locale.ROOT).endsWith(LessonReader.ENDING);
    }

    /** A lesson of the pack; the file that it asks for is beside it in the pack. */
    private Lesson lesson(String path) {
        String folder = path.substring(0, path.lastIndexOf('/') + 1);
        return LessonReader.read(
                name + "/" + path,
                files.get(path),
                asked ->
                        Optional.ofNullable(files.get(folder + asked))
                                .map(bytes -> TextFile.of(bytes, AskedFile.MOST_BYTES))
                                .orElseGet(() -> TextFile.missing(text("asks.not-packed"))));
    }

    private void unpack(ZipInputStream zip) throws IOException {
        ZipEntry entry;
        int count = 0;
        while ((entry = nextOf(zip)) != null) {
            count++;
            if (count > MOST_ENTRIES) {
                throw new IllegalArgumentException(text("pack.entries", name, MOST_ENTRIES));
            }
            String path = entry.getName();
            requireInside(path);
            if (!seen.add(path.toLowerCase(Locale.ROOT))) {
                throw new IllegalArgumentException(text("pack.twice", name, path));
            }
            byte[] bytes = bytes(zip, isLesson(path) ? LessonReader.MOST_BYTES : MOST_BYTES, path);
            if (!entry.isDirectory()) {
                files.put(path, bytes);
            }
        }
    }

    /** The next entry; a name that isn't in UTF-8 gives a one-sentence error. */
    private static ZipEntry nextOf(ZipInputStream zip) throws IOException {
        try {
            return zip.getNextEntry();
        } catch (IllegalArgumentException e) {
            throw new ZipException("a name that isn't UTF-8");
        }
    }

    private void requireInside(String path) {
        boolean plain =
                !path.isEmpty()
                        && !path.startsWith("/")
                        && path.indexOf('\\') < 0
                        && path.indexOf(':') < 0
                        && path.chars().noneMatch(c -> c < ' ' || c == 0x7F)
                        && List.of(path.split("/", -1)).stream()
                                .noneMatch(part -> part.equals("..") || part.equals("."));
        if (!plain) {
            throw new IllegalArgumentException(
                    text("pack.outside", name, path.replaceAll("\\p{Cntrl}", "?"), shortName()));
        }
    }

    private String shortName() {
        return name.replaceFirst("^.*[/\\\\]", "");
    }

    private byte[] bytes(InputStream entry, long most, String path) throws IOException {
        byte[] bytes = entry.readNBytes((int) Math.min(most, MOST_BYTES - bytesSoFar) + 1);
        bytesSoFar += bytes.length;
        if (bytesSoFar > MOST_BYTES) {
            throw tooLarge();
        }
        if (bytes.length > most) {
            throw new IllegalArgumentException(text("pack.lesson-size", name, path, most));
        }
        return bytes;
    }

    private IllegalArgumentException tooLarge() {
        return new IllegalArgumentException(text("pack.size", name, MOST_BYTES));
    }

    /**
     * Checks the central directory at the file's end, the only part that marks an entry as a link.
     *
     * <p>PKWARE, .ZIP File Format Specification, 4.3.12: each entry of the directory begins with
     * the bytes 50 4B 01 02; its byte 5 is 3 for Unix, whose file mode is in bytes 40 and 41. From
     * memory.
     */
    private void refuseLinks(byte[] zip) {
        for (int at = 0; at + 46 <= zip.length; at++) {
            boolean entry =
                    zip[at] == 0x50 && zip[at + 1] == 0x4B && zip[at + 2] == 1 && zip[at + 3] == 2;
            int type = entry && zip[at + 5] == 3 ? (zip[at + 41] & 0xF0) : 0;
            if (type == 0xA0) {
                throw new IllegalArgumentException(text("pack.link", name, shortName()));
            }
        }
    }
}
