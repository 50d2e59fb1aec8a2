package coldwright.bench.remote;

import coldwright.figure.Exhibit;
import coldwright.figure.ExhibitCodec;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Sends the figures and drawings that a snippet shows within the limits. */
final class FigureOutput {
    private final ProgramLink<OrderBatch, BenchMessage> program;
    private final int pointLimit;
    private final List<Exhibit> shown = new ArrayList<>();
    private int limit;

    FigureOutput(ProgramLink<OrderBatch, BenchMessage> program, int pointLimit) {
        this.program = program;
        this.pointLimit = pointLimit;
    }

    /** Accepts up to this many figures from now on. */
    synchronized void open(int figures) {
        shown.clear();
        limit = figures;
    }

    /** Sends an exhibit, or throws a one-sentence exception into the snippet that drew it. */
    synchronized void show(Exhibit exhibit) {
        if (limit == 0) {
            return;
        }
        if (shown.size() >= limit) {
            throw new IllegalStateException(
                    "this snippet has drawn %d figures; the page takes no more: draw fewer"
                            .formatted(limit));
        }
        long points = exhibit.size();
        if (points > pointLimit) {
            throw new IllegalArgumentException(
                    "the figure \"%s\" has %d points; the page takes up to %d: draw fewer"
                            .formatted(exhibit.title(), points, pointLimit));
        }
        send(exhibit);
        shown.add(exhibit);
    }

    /** Sends an exhibit unless the snippet already showed it. */
    synchronized void showUnlessShown(Exhibit exhibit) {
        if (!shown.contains(exhibit)) {
            show(exhibit);
        }
    }

    private void send(Exhibit exhibit) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ExhibitCodec.write(exhibit, new DataOutputStream(bytes));
        } catch (IOException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
        try {
            program.send(new BenchMessage.Shown(bytes.toByteArray()));
        } catch (IOException e) {
            throw new UncheckedIOException("the page is gone", e);
        }
    }
}
