package coldwright.figure;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** The part of the wire form that holds one series: kind, name, count of points, columns. */
final class SeriesCodec {
    private static final int CURVE = 0;
    private static final int DOTS = 1;
    private static final int BAND = 2;
    private static final int BARS = 3;

    private SeriesCodec() {}

    static void write(Series series, DataOutput out) throws IOException {
        if (series instanceof Series.Curve curve) {
            open(CURVE, series, out);
            WireFields.writeNumbers(curve.x(), out);
            WireFields.writeNumbers(curve.y(), out);
        } else if (series instanceof Series.Dots dots) {
            open(DOTS, series, out);
            WireFields.writeNumbers(dots.x(), out);
            WireFields.writeNumbers(dots.y(), out);
        } else if (series instanceof Series.Band band) {
            open(BAND, series, out);
            WireFields.writeNumbers(band.x(), out);
            WireFields.writeNumbers(band.low(), out);
            WireFields.writeNumbers(band.high(), out);
        } else if (series instanceof Series.Bars bars) {
            open(BARS, series, out);
            for (String word : bars.words()) {
                WireFields.writeText("word under a bar", word, out);
            }
            WireFields.writeNumbers(bars.values(), out);
        } else {
            throw new AssertionError(series.getClass());
        }
    }

    private static void open(int kind, Series series, DataOutput out) throws IOException {
        out.writeByte(kind);
        WireFields.writeText("name of a series", series.name(), out);
        out.writeInt(series.size());
    }

    static Series read(DataInput in, int pointLimit) throws IOException {
        int kind = in.readUnsignedByte();
        if (kind > BARS) {
            throw new IOException("the figure has a series of an unknown kind, number " + kind);
        }
        String name = WireFields.readText("name of a series", in);
        int size = WireFields.readCount("points", pointLimit, in);
        if (kind == BARS) {
            List<String> words = new ArrayList<>();
            for (int i = 0; i < size; i++) {
                words.add(WireFields.readText("word under a bar", in));
            }
            return new Series.Bars(name, words, WireFields.readNumbers(size, in));
        }
        NumberColumn x = WireFields.readNumbers(size, in);
        NumberColumn y = WireFields.readNumbers(size, in);
        if (kind == CURVE) {
            return new Series.Curve(name, x, y);
        }
        return kind == DOTS
                ? new Series.Dots(name, x, y)
                : new Series.Band(name, x, y, WireFields.readNumbers(size, in));
    }
}
