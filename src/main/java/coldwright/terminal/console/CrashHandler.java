package coldwright.terminal.console;

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

/** Where faults of the program's own go: a sentence for whoever runs it, details to a file. */
public final class CrashHandler {
    /** What the program ends with when it has a fault of its own. */
    public static final int EXIT = 3;

    private static Path file;

    private CrashHandler() {}

    /** Sends everything that would otherwise be a stack trace on the terminal to the file. */
    public static void install() {
        Logger root = Logger.getLogger("");
        for (Handler handler : root.getHandlers()) {
            root.removeHandler(handler);
        }
        root.addHandler(new ToFile());
        Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> keep(thread.getName(), fault));
    }

    /**
     * One sentence for a fault, its details kept in the file.
     *
     * @param fault what was thrown
     * @return the sentence, with the file's path
     */
    public static String sentence(Throwable fault) {
        return "Coldwright has a fault of its own (%s); %s"
                .formatted(fault.getClass().getSimpleName(), keep("command", fault));
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
            return "please report it with the file " + file;
        } catch (IOException e) {
            return "its details could not be written down";
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
