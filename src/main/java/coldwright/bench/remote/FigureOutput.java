package coldwright.bench.remote;

import coldwright.figure.Exhibit;
import coldwright.figure.ExhibitCodec;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Where figures and drawings that a snippet shows go: frames, as many and as large as are wanted.
 */
final class FigureOutput {
    private final WireFrameWriter frames;
    private final int pointLimit;
    private final List<Exhibit> shown = new ArrayList<>();
    private int limit;

    FigureOutput(WireFrameWriter frames, int pointLimit) {
        this.frames = frames;
        this.pointLimit = pointLimit;
    }

    /** Takes up to so many from now on; none are dropped unseen. */
    synchronized void open(int figures) {
        shown.clear();
        limit = figures;
    }

    /** Takes one for the page, or throws a sentence into the snippet that drew it. */
    synchronized void show(Exhibit exhibit) {
        if (limit == 0) {
            return;
        }
        if (shown.size() >= limit) {
            throw new IllegalStateException(
                    "this snippet has drawn %d figures; the page takes no more: draw fewer"
                            .formatted(limit));
        }
        long points = ExhibitCodec.points(exhibit);
        if (points > pointLimit) {
            throw new IllegalArgumentException(
                    "the figure \"%s\" has %d points; the page takes up to %d: draw fewer"
                            .formatted(exhibit.title(), points, pointLimit));
        }
        send(exhibit);
        shown.add(exhibit);
    }

    /** Takes one unless the snippet showed it itself. */
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
            frames.send(WireFrame.Kind.FIGURE, bytes.toByteArray(), bytes.size());
        } catch (IOException e) {
            throw new UncheckedIOException("the page is gone", e);
        }
    }
}
