package coldwright.bench.remote;

import coldwright.figure.Figure;
import coldwright.figure.FigureCodec;
import coldwright.figure.Series;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Where figures that a snippet shows go: frames, as many and as large as are wanted. */
final class DrawnFigures {
    private final FrameWriter frames;
    private final int pointLimit;
    private final List<Figure> shown = new ArrayList<>();
    private int limit;

    DrawnFigures(FrameWriter frames, int pointLimit) {
        this.frames = frames;
        this.pointLimit = pointLimit;
    }

    /** Takes up to so many from now on; none are dropped unseen. */
    synchronized void open(int figures) {
        shown.clear();
        limit = figures;
    }

    /** Takes one for the page, or throws a sentence into the snippet that drew it. */
    synchronized void show(Figure figure) {
        if (limit == 0) {
            return;
        }
        if (shown.size() >= limit) {
            throw new IllegalStateException(
                    "this snippet has drawn %d figures; the page takes no more: draw fewer"
                            .formatted(limit));
        }
        long points = figure.series().stream().mapToLong(Series::size).sum();
        if (points > pointLimit) {
            throw new IllegalArgumentException(
                    "the figure \"%s\" has %d points; the page takes up to %d: draw fewer"
                            .formatted(figure.title(), points, pointLimit));
        }
        send(figure);
        shown.add(figure);
    }

    /** Takes one unless the snippet showed it itself. */
    synchronized void showUnlessShown(Figure figure) {
        if (!shown.contains(figure)) {
            show(figure);
        }
    }

    private void send(Figure figure) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            FigureCodec.write(figure, new DataOutputStream(bytes));
        } catch (IOException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
        try {
            frames.send(Frame.Kind.FIGURE, bytes.toByteArray(), bytes.size());
        } catch (IOException e) {
            throw new UncheckedIOException("the page is gone", e);
        }
    }
}
