package coldwright.bench;

import coldwright.bench.remote.BenchMessage;
import coldwright.figure.Exhibit;
import coldwright.figure.ExhibitCodec;
import coldwright.figure.wire.MalformedWireException;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Collects the output and figures of a run, within the limits. */
final class RunOutput {
    private final BenchSettings settings;
    private final RunListener watcher;
    private final long startNanos;
    private final StringBuilder printed = new StringBuilder();
    private final List<Exhibit> exhibits = new ArrayList<>();
    private final CharsetDecoder decoder =
            StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPLACE)
                    .onUnmappableCharacter(CodingErrorAction.REPLACE);
    private ByteBuffer undecoded = ByteBuffer.allocate(0);
    private boolean cut;

    RunOutput(BenchSettings settings, RunListener watcher, long startNanos) {
        this.settings = settings;
        this.watcher = watcher;
        this.startNanos = startNanos;
    }

    /**
     * Takes a message of the bench's process.
     *
     * @throws IOException if a figure is malformed
     */
    void accept(BenchMessage output) throws IOException {
        if (output instanceof BenchMessage.Printed printedText) {
            printed(printedText.utf8());
        } else if (output instanceof BenchMessage.Shown shown) {
            shown(shown.bytes());
        } else {
            cut();
        }
    }

    private void printed(byte[] utf8) {
        String text = keep(utf8);
        if (!text.isEmpty()) {
            notifySafely(() -> watcher.printed(text));
        }
    }

    private synchronized String keep(byte[] utf8) {
        ByteBuffer bytes = ByteBuffer.allocate(undecoded.remaining() + utf8.length);
        bytes.put(undecoded).put(utf8).flip();
        CharBuffer characters = CharBuffer.allocate(bytes.remaining() + 1);
        decoder.decode(bytes, characters, false);
        undecoded = bytes.slice();
        String text = characters.flip().toString();
        int room = settings.printedLimit() - printed.length();
        if (text.length() > room) {
            cut = true;
            text = text.substring(0, Math.max(0, room));
        }
        printed.append(text);
        return text;
    }

    private synchronized void cut() {
        cut = true;
    }

    private void shown(byte[] bytes) throws IOException {
        Exhibit exhibit =
                ExhibitCodec.read(
                        new DataInputStream(new ByteArrayInputStream(bytes)),
                        settings.pointLimit());
        synchronized (this) {
            if (exhibits.size() >= settings.figureLimit()) {
                throw new MalformedWireException("more figures than the bench lets through");
            }
            exhibits.add(exhibit);
        }
        notifySafely(() -> watcher.onFigure(exhibit));
    }

    /** Calls a listener; its exceptions don't affect the run. */
    private static void notifySafely(Runnable word) {
        try {
            word.run();
        } catch (RuntimeException e) {
            System.getLogger("coldwright.bench")
                    .log(System.Logger.Level.WARNING, "a watcher of a run failed", e);
        }
    }

    void compiled() {
        notifySafely(watcher::compiled);
    }

    void above(int index, int count) {
        notifySafely(() -> watcher.above(index, count));
    }

    synchronized int figuresLeft() {
        return settings.figureLimit() - exhibits.size();
    }

    synchronized FinishedRun end(RunOutcome outcome) {
        return new FinishedRun(
                outcome,
                printed.toString(),
                cut,
                exhibits,
                Duration.ofNanos(System.nanoTime() - startNanos));
    }
}
