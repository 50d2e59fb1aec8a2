package coldwright.terminal.console;

import static coldwright.terminal.console.ConsoleText.text;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.logging.Formatter;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/** Reports faults of the program: a sentence for the user, details in a file. */
public final class CrashHandler {
    /** The exit code after a fault of the program. */
    public static final int EXIT = 3;

    private static Path file;

    private CrashHandler() {}

    /** Logs to the file everything that would be a stack trace on the terminal. */
    public static void install() {
        Logger root = Logger.getLogger("");
        for (Handler handler : root.getHandlers()) {
            root.removeHandler(handler);
        }
        root.addHandler(new ToFile());
        Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> keep(thread.getName(), fault));
    }

    /** One sentence for a fault, with the path of the file that has the details. */
    public static String sentence(Throwable fault) {
        return text("crash", fault.getClass().getSimpleName()) + " " + keep("command", fault);
    }

    private static String keep(String where, Throwable fault) {
        StringWriter details = new StringWriter();
        details.append(where).append('\n');
        fault.printStackTrace(new PrintWriter(details, true));
        return write(details.toString());
    }

    private static synchronized String write(String details) {
        try {
            if (file == null) {
                file = Files.createTempFile("coldwright-", ".log");
            }
            Files.writeString(
                    file,
                    Instant.now() + " " + details + "\n",
                    StandardCharsets.UTF_8,
                    StandardOpenOption.APPEND);
            return text("crash.report", file);
        } catch (IOException e) {
            return text("crash.no-details");
        }
    }

    private static final class ToFile extends Handler {
        private final Formatter formatter = new SimpleFormatter();

        @Override
        public void publish(LogRecord entry) {
            if (isLoggable(entry)) {
                write(formatter.format(entry));
            }
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }
}
