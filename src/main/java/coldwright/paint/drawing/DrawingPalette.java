package coldwright.paint.drawing;

import coldwright.figure.Drawing;
import coldwright.figure.Tint;
import coldwright.paint.style.FigureTheme;

import java.awt.Color;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The colours of a drawing's pieces: restrained, and ordered by lightness so that they also differ
 * in grey. Our own choice. Cold is deep blue, warm is straw; the scale varies in lightness and hue,
 * for all kinds of colour vision.
 */
public record DrawingPalette(Optional<Drawing.TemperatureScale> warmth) {
    /** The colours of one role: area, outline, and a highlight for round pieces. */
    record Colours(Color fill, Color edge, Color light) {}

    private static final Map<Tint.Role, Colours> ROLES = new EnumMap<>(Tint.Role.class);

    /** From cold to warm, evenly spaced. */
    static final List<Color> SCALE =
            List.of(
                    new Color(0x16355C),
                    new Color(0x2C6494),
                    new Color(0x5C98BD),
                    new Color(0x9DC5D4),
                    new Color(0xD9E4D8),
                    new Color(0xF3E3B3),
                    new Color(0xEFC77F));

    static {
        put(Tint.Role.SERUM, 0xE6ECEA, 0xC9D3D0, 0xF3F6F5);
        put(Tint.Role.FAT, 0xEACF8C, 0xB08D45, 0xF2E0B0);
        put(Tint.Role.CLUMPED_FAT, 0xD6A258, 0x8A5F22, 0xE2B877);
        put(Tint.Role.ICE, 0xE4EFF5, 0x6F93A8, 0xF7FBFD);
        put(Tint.Role.SYRUP, 0x4A6478, 0x35495A, 0x6A8294);
        put(Tint.Role.WALL, 0x4B5054, 0x2E3235, 0x6F7579);
    }

    private static void put(Tint.Role role, int fill, int edge, int light) {
        ROLES.put(role, new Colours(new Color(fill), new Color(edge), new Color(light)));
    }

    Colours of(Tint tint) {
        if (tint.role() == Tint.Role.WARMTH) {
            Color color = at(tint.temperatureC());
            return new Colours(color, FigureTheme.mixed(color, Color.BLACK, 0.25), color);
        }
        return ROLES.get(tint.role());
    }

    public Color ground(Tint.Role role) {
        return ROLES.get(role).fill();
    }

    /** The colour of a temperature, clamped to the scale. */
    public Color at(double temperatureC) {
        Drawing.TemperatureScale scale = warmth.orElse(new Drawing.TemperatureScale(-20, 10));
        double share = (temperatureC - scale.coldestC()) / (scale.warmestC() - scale.coldestC());
        double at = Math.max(0, Math.min(1, share)) * (SCALE.size() - 1);
        int low = (int) Math.min(SCALE.size() - 2, at);
        return FigureTheme.mixed(SCALE.get(low), SCALE.get(low + 1), at - low);
    }
}
