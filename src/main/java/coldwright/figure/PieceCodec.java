package coldwright.figure;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;

/** The part of the wire form that holds one piece of a drawing: kind, tint, numbers. */
final class PieceCodec {
    private static final int DISC = 0;
    private static final int OUTLINE = 1;
    private static final int BAND = 2;
    private static final int LABEL = 3;
    private static final Tint.Role[] ROLES = Tint.Role.values();

    private PieceCodec() {}

    static void write(Piece piece, DataOutput out) throws IOException {
        if (piece instanceof Piece.Disc disc) {
            out.writeByte(DISC);
            write(disc.tint(), out);
            out.writeDouble(disc.x());
            out.writeDouble(disc.y());
            out.writeDouble(disc.radius());
        } else if (piece instanceof Piece.Outline outline) {
            out.writeByte(OUTLINE);
            write(outline.tint(), out);
            out.writeInt(outline.size());
            WireFields.writeNumbers(outline.x(), out);
            WireFields.writeNumbers(outline.y(), out);
        } else if (piece instanceof Piece.Band band) {
            out.writeByte(BAND);
            write(band.upper(), out);
            write(band.lower(), out);
            out.writeDouble(band.from());
            out.writeDouble(band.to());
        } else if (piece instanceof Piece.Label label) {
            out.writeByte(LABEL);
            out.writeDouble(label.x());
            out.writeDouble(label.y());
            WireFields.writeText("label", label.text(), out);
        } else {
            throw new AssertionError(piece.getClass());
        }
    }

    static Piece read(DataInput in, int pointLimit) throws IOException {
        int kind = in.readUnsignedByte();
        if (kind == DISC) {
            Tint tint = readTint(in);
            return new Piece.Disc(in.readDouble(), in.readDouble(), in.readDouble(), tint);
        }
        if (kind == OUTLINE) {
            Tint tint = readTint(in);
            int size = WireFields.readCount("points", pointLimit, in);
            NumberColumn x = WireFields.readNumbers(size, in);
            return new Piece.Outline(x, WireFields.readNumbers(size, in), tint);
        }
        if (kind == BAND) {
            Tint upper = readTint(in);
            Tint lower = readTint(in);
            return new Piece.Band(in.readDouble(), in.readDouble(), upper, lower);
        }
        if (kind == LABEL) {
            double x = in.readDouble();
            double y = in.readDouble();
            return new Piece.Label(x, y, WireFields.readText("label", in));
        }
        throw new IOException("the figure has a piece of an unknown kind, number " + kind);
    }

    static void write(Tint.Role role, DataOutput out) throws IOException {
        out.writeByte(role.ordinal());
    }

    static Tint.Role readRole(DataInput in) throws IOException {
        int role = in.readUnsignedByte();
        if (role >= ROLES.length) {
            throw new IOException("the figure has an unknown colour, number " + role);
        }
        return ROLES[role];
    }

    private static void write(Tint tint, DataOutput out) throws IOException {
        write(tint.role(), out);
        if (tint.role() == Tint.Role.WARMTH) {
            out.writeDouble(tint.temperatureC());
        }
    }

    private static Tint readTint(DataInput in) throws IOException {
        Tint.Role role = readRole(in);
        return role == Tint.Role.WARMTH ? Tint.warmth(in.readDouble()) : Tint.of(role);
    }
}
