package coldwright.figure;

import coldwright.figure.wire.WireReader;
import coldwright.figure.wire.WireWriter;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** The wire format of one series: kind, name, count of points, columns. */
final class SeriesCodec {
    private static final int CURVE = 0;
    private static final int DOTS = 1;
    private static final int BAND = 2;
    private static final int BARS = 3;

    private SeriesCodec() {}

    static void write(Series series, WireWriter out) throws IOException {
        if (series instanceof Series.Curve curve) {
            open(CURVE, series, out);
            write(out, curve.x(), curve.y());
        } else if (series instanceof Series.Dots dots) {
            open(DOTS, series, out);
            write(out, dots.x(), dots.y());
        } else if (series instanceof Series.Band band) {
            open(BAND, series, out);
            write(out, band.x(), band.low(), band.high());
        } else if (series instanceof Series.Bars bars) {
            open(BARS, series, out);
            for (String word : bars.words()) {
                out.text("word under a bar", word);
            }
            write(out, bars.values());
        } else {
            throw new AssertionError(series.getClass());
        }
    }

    private static void open(int kind, Series series, WireWriter out) throws IOException {
        out.code(kind);
        out.text("name of a series", series.name());
        out.whole(series.size());
    }

    private static void write(WireWriter out, NumberColumn... columns) throws IOException {
        for (NumberColumn column : columns) {
            out.numbers(column.size(), column::at);
        }
    }

    static Series read(WireReader in, int pointLimit) throws IOException {
        int kind = in.code("a series of an unknown kind", BARS + 1);
        String name = in.text("name of a series");
        int size = in.count("points", pointLimit);
        if (kind == BARS) {
            List<String> words = new ArrayList<>();
            for (int i = 0; i < size; i++) {
                words.add(in.text("word under a bar"));
            }
            return new Series.Bars(name, words, NumberColumn.of(in.numbers(size)));
        }
        NumberColumn x = NumberColumn.of(in.numbers(size));
        NumberColumn y = NumberColumn.of(in.numbers(size));
        if (kind == CURVE) {
            return new Series.Curve(name, x, y);
        }
        return kind == DOTS
                ? new Series.Dots(name, x, y)
                : new Series.Band(name, x, y, NumberColumn.of(in.numbers(size)));
    }
}
