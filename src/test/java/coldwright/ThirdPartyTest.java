package coldwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import org.junit.jupiter.api.Test;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/** What ships is listed in docs/third-party.md, under licences that can go with Apache 2.0. */
class ThirdPartyTest {
    private static final Path DOCS = Path.of("docs");
    private static final Path FONTS = Path.of("src/main/resources/coldwright/fonts");

    /** Maven writes it before the tests run. */
    private static final Path SHIPPED = Path.of("target/runtime-classpath.txt");

    /** No licence that would bind the whole program; the LGPL's libraries are jars of their own. */
    private static final Set<String> ALLOWED =
            Set.of(
                    "Apache-2.0",
                    "MIT",
                    "BSD-2-Clause",
                    "BSD-3-Clause",
                    "W3C",
                    "LGPL-2.1-or-later",
                    "GPL-2.0 WITH Classpath-exception-2.0");

    /** On the class path of the tests only. */
    private static final Pattern FOR_TESTS =
            Pattern.compile(
                    "junit-.*|opentest4j|apiguardian-api|archunit.*|slf4j-api|testfx-.*"
                            + "|openjfx-monocle|org\\.osgi\\.core|hamcrest|assertj-core|jmh-.*"
                            + "|jopt-simple|commons-math3|surefire.*"
                            + "|validation-model|verapdf-.*|core|parser|pdf-model|metadata-fixer"
                            + "|feature-reporting|rhino|jaxb-.*|javax\\.activation-api|stax-utils");

    private static final Pattern JAR = Pattern.compile("(.+?)-\\d[^/]*\\.jar");
    private static final Pattern ROW = Pattern.compile("\\| ([^|]+) \\| ([^|]+) \\| ([^|]+) \\|");
    private static final Pattern IN_JAR = Pattern.compile("in the jar: `([^`]+)`");
    private static final Pattern LINK = Pattern.compile("\\[[^]]+]\\(([^)]+)\\)");
    private static final Pattern DECLARED =
            Pattern.compile("<licen[sc]e>.*?<name>([^<]+)</name>", Pattern.DOTALL);

    /** A row of the page: what, under which licence, and where the licence can be read. */
    private record Row(String what, String licence, String text) {}

    @Test
    void everyLibraryOnTheClassPathIsListed() throws IOException {
        Set<String> unlisted = new TreeSet<>(jars(System.getProperty("java.class.path")).keySet());
        unlisted.removeIf(artifact -> FOR_TESTS.matcher(artifact).matches());
        unlisted.removeAll(libraries().keySet());
        assertEquals(Set.of(), unlisted, "give each a row in docs/third-party.md");
    }

    /** Catches a library that ships and is listed as for tests, and a row that nothing needs. */
    @Test
    void whatShipsIsWhatIsListed() throws IOException {
        assumeTrue(
                Files.exists(SHIPPED)
                        && Files.getLastModifiedTime(SHIPPED)
                                        .compareTo(Files.getLastModifiedTime(Path.of("pom.xml")))
                                > 0,
                "only Maven lists what ships");
        assertEquals(jars(Files.readString(SHIPPED)).keySet(), libraries().keySet());
    }

    @Test
    void everyLicenceIsAllowedAndItsTextIsThere() throws IOException {
        Map<String, Path> jars = jars(System.getProperty("java.class.path"));
        for (Map.Entry<String, Row> library : libraries().entrySet()) {
            Row row = library.getValue();
            for (String licence : row.licence().split(", ")) {
                assertTrue(ALLOWED.contains(licence), row + " has a licence that isn't allowed");
            }
            Path jar = jars.get(library.getKey());
            assertTrue(jar != null, row + " isn't on the class path");
            assertTrue(hasText(row, jar), row + ": there is no such text");
        }
    }

    @Test
    void noLibraryDeclaresAnotherLicenceThanListed() throws IOException {
        int declared = 0;
        Map<String, Path> jars = jars(System.getProperty("java.class.path"));
        for (Map.Entry<String, Row> library : libraries().entrySet()) {
            for (String licence : declaredBy(jars.get(library.getKey()))) {
                declared++;
                assertTrue(
                        Stream.of(library.getValue().licence().split(", "))
                                .anyMatch(listed -> family(listed).equals(family(licence))),
                        library.getValue() + " declares " + licence);
            }
        }
        assertTrue(declared >= 10, "only " + declared + " jars declare a licence");
    }

    @Test
    void everyFontIsListedAndItsLicenceShips() throws IOException {
        Set<String> listed = new TreeSet<>();
        for (Row row : rows("## Fonts")) {
            for (String file : row.licence().split(", ")) {
                listed.add(file);
                String text = "";
                for (String licence : row.text().split(", ")) {
                    text += Files.readString(FONTS.resolve(licence), StandardCharsets.UTF_8);
                }
                assertTrue(text.contains(file), file + " isn't named in " + row.text());
                assertTrue(text.contains("SIL OPEN FONT LICENSE Version 1.1"), row.text());
            }
        }
        try (Stream<Path> files = Files.list(FONTS)) {
            assertEquals(
                    files.map(file -> file.getFileName().toString())
                            .filter(name -> !name.endsWith(".txt"))
                            .collect(Collectors.toCollection(TreeSet::new)),
                    listed);
        }
    }

    private static List<Row> rows(String heading) throws IOException {
        String page = Files.readString(DOCS.resolve("third-party.md"), StandardCharsets.UTF_8);
        String section = page.substring(page.indexOf(heading) + heading.length());
        int next = section.indexOf("\n## ");
        List<Row> rows =
                ROW.matcher(next < 0 ? section : section.substring(0, next))
                        .results()
                        .map(row -> new Row(row.group(1), row.group(2), row.group(3)))
                        .skip(1) // the head
                        .toList();
        assertTrue(rows.size() > 3, "no table under " + heading);
        return rows;
    }

    /** By artifact, without its group. */
    private static Map<String, Row> libraries() throws IOException {
        return rows("## Libraries").stream()
                .collect(
                        Collectors.toMap(
                                row -> row.what().substring(row.what().indexOf(':') + 1),
                                row -> row,
                                (one, other) -> {
                                    throw new IllegalStateException("two rows: " + other);
                                },
                                TreeMap::new));
    }

    /** By artifact; where one has several jars, that without code for a platform. */
    private static Map<String, Path> jars(String classPath) {
        Map<String, Path> jars = new TreeMap<>();
        for (String entry : Arrays.asList(classPath.strip().split(File.pathSeparator))) {
            Path file = Path.of(entry);
            Matcher name = JAR.matcher(file.getFileName().toString());
            if (name.matches()) {
                jars.putIfAbsent(name.group(1), file);
            } else {
                assertTrue(!entry.endsWith(".jar"), entry + " has no version in its name");
            }
        }
        return jars;
    }

    private static boolean hasText(Row row, Path jar) throws IOException {
        Matcher inJar = IN_JAR.matcher(row.text());
        if (inJar.matches()) {
            try (JarFile opened = new JarFile(jar.toFile())) {
                return opened.getEntry(inJar.group(1)) != null;
            }
        }
        Matcher link = LINK.matcher(row.text());
        return link.matches() && Files.size(DOCS.resolve(link.group(1))) > 500;
    }

    /** The licences that a jar's manifest and its own POM name. */
    private static List<String> declaredBy(Path jar) throws IOException {
        List<String> names = new ArrayList<>();
        try (JarFile opened = new JarFile(jar.toFile())) {
            String inManifest = opened.getManifest().getMainAttributes().getValue("Bundle-License");
            if (inManifest != null) {
                names.add(inManifest);
            }
            for (ZipEntry entry : opened.stream().toList()) {
                if (entry.getName().matches("META-INF/maven/.*/pom\\.xml")) {
                    byte[] pom = opened.getInputStream(entry).readAllBytes();
                    DECLARED.matcher(new String(pom, StandardCharsets.UTF_8))
                            .results()
                            .forEach(licence -> names.add(licence.group(1)));
                }
            }
        }
        return names;
    }

    /** GPL, LGPL, Apache, BSD, MIT, or the name itself. */
    private static String family(String licence) {
        String name = licence.toLowerCase(Locale.ROOT);
        return name.contains("lgpl") || name.contains("lesser")
                ? "lgpl"
                : name.contains("gpl") || name.contains("general public")
                        ? "gpl"
                        : Stream.of("apache", "bsd", "mit")
                                .filter(name::contains)
                                .findFirst()
                                .orElse(name);
    }
}
