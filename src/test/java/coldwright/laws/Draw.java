package coldwright.laws;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.random.RandomGenerator;

/** Draws the values of one case: anywhere in their range, and often at its ends and other edges. */
public final class Draw {
    /** One value in this many is an edge. */
    private static final int EDGE = 10;

    private static final int MOST_SHOWN = 2000;

    private final RandomGenerator random;
    private final List<Object> drawn = new ArrayList<>();

    Draw(long seed) {
        random = new SplittableRandom(seed);
    }

    /** A number from least to most: at their ends, near them, at 0, ±1 and ±0.01 more often. */
    public double doubleIn(double least, double most) {
        return kept(freshDouble(least, most));
    }

    private double freshDouble(double least, double most) {
        if (chance(EDGE)) {
            double near = Math.scalb(most - least, -1 - random.nextInt(40));
            return Math.max(
                    least,
                    Math.min(
                            most,
                            any(
                                    least,
                                    most,
                                    0.0,
                                    1.0,
                                    -1.0,
                                    0.01,
                                    -0.01,
                                    least + near,
                                    most - near)));
        }
        double value = least + random.nextDouble() * (most - least);
        boolean round = chance(4); // few digits, as people type them
        return Math.max(least, Math.min(most, round ? Math.rint(value * 100) / 100 : value));
    }

    /** Any finite double, the smallest and the greatest too. */
    public double finiteDouble() {
        if (chance(EDGE)) {
            double edge = any(Double.MAX_VALUE, Double.MIN_VALUE, Double.MIN_NORMAL, 0.0, 1.0);
            return kept(random.nextBoolean() ? edge : -edge);
        }
        double plain = random.nextGaussian();
        return kept(chance(3) ? plain : Math.scalb(plain, random.nextInt(-1000, 1000)));
    }

    /** A whole number from least to most, both included. */
    public int intIn(int least, int most) {
        int edge = any(least, most, 0, 1, -1, least + 1, most - 1);
        boolean isEdge = chance(EDGE) && edge >= least && edge <= most;
        return kept(isEdge ? edge : (int) random.nextLong(least, most + 1L));
    }

    /** Any whole number, to seed another generator for example. */
    public long anyLong() {
        return kept(
                chance(EDGE)
                        ? any(0L, 1L, -1L, Long.MIN_VALUE, Long.MAX_VALUE)
                        : random.nextLong());
    }

    /** Heads or tails. */
    public boolean anyBoolean() {
        return kept(random.nextBoolean());
    }

    /** A generator with a seed of this case. */
    public Random anyRandom() {
        return new Random(anyLong());
    }

    /** One of these. */
    @SafeVarargs
    public final <T> T oneOf(T... values) {
        return kept(values[random.nextInt(values.length)]);
    }

    /** One of these. */
    public <T> T oneOf(List<T> values) {
        return kept(values.get(random.nextInt(values.size())));
    }

    /** What one of these makes. */
    @SafeVarargs
    public final <T> T from(Function<Draw, ? extends T>... makers) {
        return one(makers[random.nextInt(makers.length)]);
    }

    /** What a maker makes of this draw, kept as one value. */
    public <T> T one(Function<Draw, ? extends T> maker) {
        int before = drawn.size();
        T made = maker.apply(this);
        drawn.subList(before, drawn.size()).clear();
        return kept(made);
    }

    /** A list of least to most: empty, short and full ones more often. */
    public <T> List<T> listOf(int least, int most, Function<Draw, ? extends T> maker) {
        return one(
                draw -> {
                    int size = draw.intIn(least, size(least, most));
                    List<T> list = new ArrayList<>();
                    for (int i = 0; i < size; i++) {
                        list.add(maker.apply(draw));
                    }
                    return list;
                });
    }

    /** Such a list without two elements of one key; where keys repeat it may be shorter. */
    public <T> List<T> unlike(
            int least, int most, Function<T, ?> key, Function<Draw, ? extends T> maker) {
        return one(
                draw -> {
                    Map<Object, T> byKey = new LinkedHashMap<>();
                    draw.<T>listOf(least, most, maker)
                            .forEach(value -> byKey.putIfAbsent(key.apply(value), value));
                    return List.copyOf(byKey.values());
                });
    }

    /** Bytes, at most so many. */
    public byte[] bytes(int most) {
        byte[] bytes = new byte[one(draw -> draw.intIn(0, most))];
        random.nextBytes(bytes);
        return kept(bytes);
    }

    /** Any text of whole characters: plain, of all alphabets, of signs that are hard to carry. */
    public String text(int most) {
        return kept(freshText(most, false));
    }

    /** Any text, halves of surrogate pairs too. */
    public String brokenText(int most) {
        return kept(freshText(most, true));
    }

    private String freshText(int most, boolean broken) {
        int size = one(draw -> draw.intIn(0, size(0, most)));
        StringBuilder text = new StringBuilder();
        int kind = random.nextInt(4);
        while (text.length() < size) {
            text.appendCodePoint(character(kind == 3 ? random.nextInt(3) : kind, broken));
        }
        // a pair may have made it one too long
        return text.length() == size ? text.toString() : text.substring(0, size - 1);
    }

    private int character(int kind, boolean broken) {
        if (kind == 0) {
            return random.nextInt(' ', 0x7F);
        }
        if (kind == 1) {
            return any(0, 9, 10, 13, 0x85, 0xA0, 0x2028, 0x3000, 0xFEFF, 0xFFFD, 0xFFFF, 0x1F366);
        }
        int any = random.nextInt(chance(4) ? Character.MAX_CODE_POINT + 1 : 0x10000);
        boolean half = any >= Character.MIN_SURROGATE && any <= Character.MAX_SURROGATE;
        return half && !broken ? 0xE9 : broken && chance(8) ? random.nextInt(0xD800, 0xE000) : any;
    }

    /** Most lists and texts are short, some fill what is allowed. */
    private int size(int least, int most) {
        return Math.min(most, least + any(3, 6, 12, 24, 48, most - least));
    }

    @SafeVarargs
    private <T> T any(T... values) {
        return values[random.nextInt(values.length)];
    }

    private boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }

    private <T> T kept(T value) {
        drawn.add(value);
        return value;
    }

    /** What was drawn, in order; characters outside plain ASCII escaped, long cases cut. */
    @Override
    public String toString() {
        StringBuilder words = new StringBuilder();
        Arrays.deepToString(drawn.toArray())
                .chars()
                .limit(MOST_SHOWN)
                .forEach(
                        c -> {
                            if (c < ' ' || c >= Character.MIN_SURROGATE) {
                                words.append("\\u%04X".formatted(c));
                            } else {
                                words.append((char) c);
                            }
                        });
        return words.append(words.length() >= MOST_SHOWN ? " …" : "").toString();
    }
}
