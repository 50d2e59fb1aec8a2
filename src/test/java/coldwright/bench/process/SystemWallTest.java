package coldwright.bench.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import coldwright.bench.BenchClassPath;
import coldwright.bench.compile.SnippetSource;
import coldwright.bench.compile.StepCompiler;
import coldwright.bench.remote.BenchMessage;
import coldwright.bench.remote.Order;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** What a snippet finds behind the system's wall, were the list of names not there. */
final class SystemWallTest {
    private static BenchProcess process;
    private static StepCompiler compiler;

    @BeforeAll
    static void start() throws IOException {
        assumeTrue(SystemWall.isAtHand(), "bubblewrap isn't installed here");
        LaunchSettings launch = LaunchSettings.bench(BenchClassPath.ofThisProgram(), 64, 1_000);
        process = new BenchProcess(launch, 1_000, true);
        process.awaitReady();
        compiler =
                new StepCompiler(
                        List.of(),
                        List.of(
                                "import java.io.*;",
                                "import java.nio.file.*;",
                                "import java.net.*;"));
    }

    @AfterAll
    static void end() {
        if (process != null) {
            process.close();
            compiler.close();
        }
    }

    /** The value of an expression there, or the simple name of what it throws. */
    private static String value(String expression) throws Exception {
        List<Order> orders = new ArrayList<>();
        orders.add(new Order.Fresh());
        orders.addAll(
                compiler.compile(expression, () -> false)
                        .with(SnippetSource.of(expression))
                        .orElseThrow()
                        .orders(true));
        compiler.rewindTo(0);
        BenchMessage.Reply reply = process.execute(orders, output -> {});
        if (reply instanceof BenchMessage.Failed failed) {
            String name = failed.thrown().get(0).className();
            return name.substring(name.lastIndexOf('.') + 1);
        }
        return ((BenchMessage.Done) reply).value().orElseThrow().text();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Files.exists(Path.of(\"/bin/sh\"))                            | false",
                "Files.exists(Path.of(\"/usr/bin/env\"))                       | false",
                "Files.exists(Path.of(\"/etc/passwd\"))                        | false",
                "Files.exists(Path.of(\"/var\"))                               | false",
                "Files.exists(Path.of(\"/home\"))                              | false",
                "ProcessHandle.allProcesses().count()                          | 1",
                "ProcessHandle.current().pid()                                 | 1",
                "NetworkInterface.networkInterfaces().count()                  | 1",
                "new ProcessBuilder(\"/bin/sh\").start()                       | IOException",
                "Files.createFile(Path.of(\"/usr/lib/x\"))                     | FileSystemException",
                "Files.createFile(Path.of(\"note.txt\")).toString()            | note.txt",
            })
    void findsNothingOfTheMachine(String expression, String expected) throws Exception {
        assertEquals(expected, value(expression));
    }

    @Test
    void reachesNoServerOfThisMachine() throws Exception {
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            assertEquals(
                    "ConnectException",
                    value("new Socket(\"127.0.0.1\", %d)".formatted(server.getLocalPort())));
        }
    }

    @Test
    void seesNoFileOfTheUser(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("mine.txt"), "mine");
        assertEquals("false", value("Files.exists(Path.of(\"%s\"))".formatted(file)));
        assertEquals(
                "NoSuchFileException",
                value("Files.writeString(Path.of(\"%s\"), \"x\")".formatted(file)));
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void itsProcessorTimeIsThatOfJava() throws Exception {
        value(
                "for (long i = 0, end = System.nanoTime() + 200_000_000; System.nanoTime() < end; i++);\n1");
        assertTrue(process.processorTime().toMillis() > 50, process.processorTime().toString());
    }

    /** Whenever it is killed, even before Java has started. */
    @Test
    void aKillEndsAllOfIt() throws Exception {
        int mark = 123_457; // an argument that no other process has
        LaunchSettings launch = LaunchSettings.bench(BenchClassPath.ofThisProgram(), 64, mark);
        for (int ms : List.of(-1, 0, 1, 2, 4, 8, 16)) {
            BenchProcess other = new BenchProcess(launch, mark, true);
            if (ms < 0) {
                other.awaitReady();
                assertTrue(other.suits(true));
                assertFalse(other.suits(false));
            } else {
                Thread.sleep(ms);
            }
            other.close();
        }
        for (ProcessHandle one : ProcessHandle.allProcesses().toList()) {
            if (one.info().commandLine().orElse("").contains(" " + mark)) {
                one.onExit().get(60, TimeUnit.SECONDS);
            }
        }
    }
}
