package coldwright.lesson;

import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The right answer to a prediction or a question. */
public sealed interface ExpectedAnswer {
    /** Chooses the function for this kind of answer. With a new kind every caller must treat it. */
    <T> T of(Cases<T> cases);

    /** Calls the function for this kind of answer. */
    default <T> T match(
            Function<Choice, T> choice,
            Function<Several, T> several,
            Function<Amount, T> amount,
            Function<Curve, T> curve) {
        return of(new Cases<>(choice, several, amount, curve));
    }

    /** A function for each kind of answer. */
    record Cases<T>(
            Function<Choice, T> choice,
            Function<Several, T> several,
            Function<Amount, T> amount,
            Function<Curve, T> curve) {}

    /** Two or more choices, with the index of the right one, from 0. */
    record Choice(List<String> choices, int right) implements ExpectedAnswer {
        public Choice {
            choices = List.copyOf(choices);
        }

        @Override
        public <T> T of(Cases<T> cases) {
            return cases.choice.apply(this);
        }
    }

    /**
     * Two or more choices of which several may be right: the reason or belief behind each, empty
     * where there is none, and the indices of the right ones, from 0; at least one.
     */
    record Several(List<String> choices, List<String> reasons, Set<Integer> right)
            implements ExpectedAnswer {
        private static final String AND = "; ";

        public Several {
            choices = List.copyOf(choices);
            reasons = List.copyOf(reasons);
            right = Set.copyOf(right);
        }

        @Override
        public <T> T of(Cases<T> cases) {
            return cases.several.apply(this);
        }

        /** Some of the choices as one answer, in the order of the choices. */
        public String words(Collection<Integer> some) {
            return some.stream().sorted().map(choices::get).collect(Collectors.joining(AND));
        }

        /**
         * The indices of the choices in an answer that {@link #words} wrote; none if a part of the
         * answer isn't a choice.
         */
        public Set<Integer> chosen(String said) {
            Set<Integer> found = new TreeSet<>();
            String rest = said;
            for (int i = 0; i < choices.size() && !rest.isEmpty(); i++) {
                if (rest.equals(choices.get(i)) || rest.startsWith(choices.get(i) + AND)) {
                    found.add(i);
                    rest = rest.substring(Math.min(rest.length(), choices.get(i).length() + 2));
                }
            }
            return rest.isEmpty() ? found : Set.of();
        }
    }

    /** A number, its unit, which may be empty, and the allowed difference in that unit. */
    record Amount(double value, String unit, double within) implements ExpectedAnswer {
        private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)");

        @Override
        public <T> T of(Cases<T> cases) {
            return cases.amount.apply(this);
        }

        /** Whether a number, in the unit, counts as right. */
        public boolean accepts(double said) {
            return Math.abs(said - value) <= within;
        }

        /**
         * Reads a number as people type it, with a decimal point or comma, any kind of minus, with
         * or without the unit; empty if it isn't a number.
         */
        public OptionalDouble read(String typed) {
            String text = typed.strip();
            int end = text.length() - unit.strip().length();
            String bare =
                    text.regionMatches(true, end, unit.strip(), 0, unit.strip().length())
                            ? text.substring(0, end)
                            : text;
            String plain =
                    bare.strip()
                            .replace(',', '.')
                            .replaceAll("[−–]", "-")
                            .replaceAll("^([-+])\\s+", "$1");
            return NUMBER.matcher(plain).matches()
                    ? OptionalDouble.of(Double.parseDouble(plain))
                    : OptionalDouble.empty();
        }
    }

    /** A hand-drawn curve on an x and a y axis; right is the first curve that the run draws. */
    record Curve(Scale level, Scale upright) implements ExpectedAnswer {
        @Override
        public <T> T of(Cases<T> cases) {
            return cases.curve.apply(this);
        }
    }

    /** An axis to draw along: its quantity, its ends, the lower first, and its unit, if any. */
    record Scale(String label, double from, double to, String unit) {}
}
