package coldwright.figure;

import coldwright.figure.wire.WireReader;
import coldwright.figure.wire.WireWriter;

import java.io.IOException;

/** The wire format of one piece of a drawing: kind, tint, numbers. */
final class PieceCodec {
    private static final int DISC = 0;
    private static final int OUTLINE = 1;
    private static final int BAND = 2;
    private static final int LABEL = 3;
    private static final Tint.Role[] ROLES = Tint.Role.values();

    private PieceCodec() {}

    static void write(Piece piece, WireWriter out) throws IOException {
        if (piece instanceof Piece.Disc disc) {
            out.code(DISC);
            write(disc.tint(), out);
            out.number(disc.x());
            out.number(disc.y());
            out.number(disc.radius());
        } else if (piece instanceof Piece.Outline outline) {
            out.code(OUTLINE);
            write(outline.tint(), out);
            out.whole(outline.size());
            out.numbers(outline.size(), outline.x()::at);
            out.numbers(outline.size(), outline.y()::at);
        } else if (piece instanceof Piece.Band band) {
            out.code(BAND);
            write(band.upper(), out);
            write(band.lower(), out);
            out.number(band.from());
            out.number(band.to());
        } else if (piece instanceof Piece.Label label) {
            out.code(LABEL);
            out.number(label.x());
            out.number(label.y());
            out.text("label", label.text());
        } else {
            throw new AssertionError(piece.getClass());
        }
    }

    static Piece read(WireReader in, int pointLimit) throws IOException {
        int kind = in.code("a piece of an unknown kind", LABEL + 1);
        if (kind == DISC) {
            Tint tint = readTint(in);
            return new Piece.Disc(in.number(), in.number(), in.number(), tint);
        }
        if (kind == OUTLINE) {
            Tint tint = readTint(in);
            int size = in.count("points", pointLimit);
            NumberColumn x = NumberColumn.of(in.numbers(size));
            return new Piece.Outline(x, NumberColumn.of(in.numbers(size)), tint);
        }
        if (kind == BAND) {
            Tint upper = readTint(in);
            Tint lower = readTint(in);
            return new Piece.Band(in.number(), in.number(), upper, lower);
        }
        double x = in.number();
        double y = in.number();
        return new Piece.Label(x, y, in.text("label"));
    }

    static void write(Tint.Role role, WireWriter out) throws IOException {
        out.code(role.ordinal());
    }

    static Tint.Role readRole(WireReader in) throws IOException {
        return ROLES[in.code("an unknown colour", ROLES.length)];
    }

    private static void write(Tint tint, WireWriter out) throws IOException {
        write(tint.role(), out);
        if (tint.role() == Tint.Role.WARMTH) {
            out.number(tint.temperatureC());
        }
    }

    private static Tint readTint(WireReader in) throws IOException {
        Tint.Role role = readRole(in);
        return role == Tint.Role.WARMTH ? Tint.warmth(in.number()) : Tint.of(role);
    }
}
