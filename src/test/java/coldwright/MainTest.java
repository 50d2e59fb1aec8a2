package coldwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The program as people start it: in a process of its own. */
class MainTest {
    private static final String LESSON = "src/test/resources/lessons-to-run/01-warm-oats.md";
    private static final int LONGEST_MINUTES = 3;

    @TempDir Path folder;

    /** A configuration of fontconfig; empty for the system's. */
    private String fonts = "";

    private record Ended(int exit, String out, String err) {}

    private Ended start(List<String> flags, String... words)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(flags);
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "coldwright.Main"));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put("LC_ALL", "C");
        builder.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY"));
        if (!fonts.isEmpty()) {
            builder.environment().put("FONTCONFIG_FILE", fonts);
        }
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        Process process =
                builder.redirectInput(ProcessBuilder.Redirect.PIPE)
                        .redirectOutput(out.toFile())
                        .redirectError(err.toFile())
                        .start();
        process.getOutputStream().close();
        assertTrue(process.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES), "still running");
        return new Ended(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }

    @Test
    void aCommandWritesUtf8WhateverTheLocaleAndLoadsNoWindow()
            throws IOException, InterruptedException {
        Ended ended =
                start(
                        List.of("-Xlog:class+load:file=" + folder + "/loaded"),
                        "walk",
                        "--trust",
                        LESSON,
                        "-o",
                        folder.toString());
        assertEquals(0, ended.exit(), ended.err());
        assertTrue(ended.out().contains("Oats are toasted at 180 °C."), ended.out());
        assertEquals("", ended.err());
        String loaded = Files.readString(folder.resolve("loaded"), StandardCharsets.UTF_8);
        assertTrue(loaded.contains("coldwright.terminal.LessonCommands"));
        assertFalse(loaded.contains("javafx."));
        assertFalse(loaded.contains("coldwright.desk.Desk "));
    }

    @Test
    void aLessonAPackOrABatchIsForTheWindowAndNothingElse() throws IOException {
        for (String name : List.of("a.md", "pack.zip", "PACK.ZIP", "sorbet.batch")) {
            Path file = Files.writeString(folder.resolve(name), "");
            assertTrue(Main.isForTheWindow(file.toString()), name);
        }
        assertTrue(Main.isForTheWindow(folder.toString()), "a folder of lessons");
        assertFalse(Main.isForTheWindow(folder.resolve("none.zip").toString()));
        assertFalse(Main.isForTheWindow(Files.createFile(folder.resolve("a.png")).toString()));
        assertFalse(Main.isForTheWindow("check"));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void withoutADisplayItSaysSoInALineAndWalksTheFirstLesson()
            throws IOException, InterruptedException {
        Ended ended = start(List.of());
        assertEquals(0, ended.exit(), ended.err());
        List<String> lines = ended.out().lines().toList();
        assertTrue(lines.get(0).contains("DISPLAY"), lines.get(0));
        assertTrue(lines.get(2).startsWith("==="), "the title's rule is " + lines.get(2));
        assertTrue(ended.out().contains("\n2 of "), ended.out());
        assertFalse(ended.out().contains("Exception"), ended.out());
        assertEquals("", ended.err());
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void withoutAnySystemFontAHandoutUsesThoseThatCame() throws IOException, InterruptedException {
        Path none = folder.resolve("fonts.conf");
        Files.writeString(none, "<fontconfig><cachedir>" + folder + "</cachedir></fontconfig>");
        fonts = none.toString();
        Path pdf = folder.resolve("oats.pdf");
        Ended ended =
                start(
                        List.of("-Duser.home=" + folder),
                        "handout",
                        "--trust",
                        LESSON,
                        "-o",
                        pdf.toString());
        assertEquals(0, ended.exit(), ended.err());
        assertFalse(ended.err().contains("Coldwright"), ended.err());
        assertTrue(Files.size(pdf) > 10_000, "an empty PDF");
    }
}
