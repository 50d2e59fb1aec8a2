package coldwright.print;

import coldwright.lesson.KitItem;
import coldwright.lesson.Lesson;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What to buy and to have ready for the kitchen trials of some lessons. Bought things add up over
 * the lessons. Equipment is used again, so the lesson that needs most of it counts.
 *
 * @param lessons the lessons
 * @param learners number of learners, 1 to 999
 */
public record KitList(List<Lesson> lessons, int learners) {
    /**
     * Checks the number of learners.
     *
     * @throws IllegalArgumentException if it isn't from 1 to 999
     */
    public KitList {
        lessons = List.copyOf(lessons);
        if (learners < 1 || learners > 999) {
            throw new IllegalArgumentException(
                    "The number of learners is %d. Write one from 1 to 999.".formatted(learners));
        }
    }

    /** The list as paragraphs and lists: a heading, then its lines. */
    public Map<String, List<String>> sections() {
        Map<String, List<String>> sections = new LinkedHashMap<>();
        sections.put("Trials", lessons.stream().map(KitList::trial).toList());
        sections.put("To buy", lines(true));
        sections.put("Allergens in it (labels may name more)", allergenLines());
        sections.put("To have ready", lines(false));
        return sections;
    }

    /** The list as text, a line each. */
    public List<String> text() {
        List<String> all = new ArrayList<>(List.of(title(), ""));
        sections()
                .forEach(
                        (heading, lines) -> {
                            all.add(heading);
                            lines.forEach(line -> all.add("  " + line));
                            all.add("");
                        });
        return all;
    }

    /** The list as one self-contained HTML text. */
    public String html(PaperSize paper) {
        StringBuilder html =
                new StringBuilder("<h1>%s</h1>\n".formatted(HtmlMarkup.escaped(title())));
        sections()
                .forEach(
                        (heading, lines) -> {
                            html.append("<section>\n<h2>%s</h2>\n<ul>\n".formatted(heading));
                            lines.forEach(
                                    line ->
                                            html.append(
                                                    "<li>%s</li>\n"
                                                            .formatted(HtmlMarkup.escaped(line))));
                            html.append("</ul>\n</section>\n");
                        });
        return HandoutStyle.HANDOUT.page(HtmlMarkup.escaped(title()), paper, html.toString());
    }

    private String title() {
        return "Kit for %d learner%s".formatted(learners, learners == 1 ? "" : "s");
    }

    private static String trial(Lesson lesson) {
        List<KitItem> work = lesson.kit().stream().filter(one -> one.unit().equals("min")).toList();
        return work.isEmpty()
                ? lesson.title() + ": no kitchen trial"
                : "%s: %s min of work, waiting not counted"
                        .formatted(lesson.title(), QuestionSheet.number(work.get(0).amount()));
    }

    private List<String> lines(boolean bought) {
        Map<String, Map<Lesson, Double>> amounts = new LinkedHashMap<>();
        Map<String, KitItem> items = new LinkedHashMap<>();
        for (Lesson lesson : lessons) {
            for (KitItem item : lesson.kit()) {
                boolean used = item.unit().isEmpty();
                if (!item.unit().equals("min") && used != bought) {
                    String key = item.unit() + " " + item.name();
                    items.merge(key, item, KitList::joined);
                    amounts.computeIfAbsent(key, one -> new LinkedHashMap<>())
                            .merge(lesson, item.amount() * item.times(learners), Double::sum);
                }
            }
        }
        List<String> lines = new ArrayList<>();
        items.forEach((key, item) -> lines.add(line(item, amounts.get(key).values(), bought)));
        return lines;
    }

    /** Rough if one of them is; shared among as many as the first. */
    private static KitItem joined(KitItem first, KitItem other) {
        return new KitItem(
                first.amount(),
                first.unit(),
                first.name(),
                first.learners(),
                first.roughly() || other.roughly());
    }

    private static String line(KitItem item, Collection<Double> perLesson, boolean bought) {
        Stream<Double> each = perLesson.stream();
        double amount =
                bought
                        ? each.mapToDouble(Double::doubleValue).sum()
                        : each.mapToDouble(Double::doubleValue).max().orElse(0);
        boolean kilos = item.unit().equals("g") && amount >= 1000;
        double shown = kilos ? Math.ceil(amount / 10) / 100 : Math.ceil(amount * 10) / 10;
        String unit = kilos ? " kg" : item.unit().matches("g|mL") ? " " + item.unit() : " ×";
        String shared =
                bought
                        ? ""
                        : item.learners() == 0
                                ? " (for all)"
                                : item.learners() == 1
                                        ? ""
                                        : " (shared by %d)".formatted(item.learners());
        return "%s%s%s %s%s"
                .formatted(
                        item.roughly() ? "about " : "",
                        QuestionSheet.number(shown),
                        unit,
                        item.name(),
                        shared);
    }

    private List<String> allergenLines() {
        Map<Allergen, Set<String>> found = new EnumMap<>(Allergen.class);
        lessons.stream()
                .flatMap(lesson -> lesson.kit().stream())
                .forEach(
                        item ->
                                allergens(item)
                                        .forEach(
                                                one ->
                                                        found.computeIfAbsent(
                                                                        one, any -> new TreeSet<>())
                                                                .add(item.name())));
        return found.entrySet().stream()
                .map(one -> one.getKey().words() + ": " + String.join(", ", one.getValue()))
                .toList();
    }

    /** The allergens that something to buy usually contains, if it is on the shelf. */
    public static Set<Allergen> allergens(KitItem item) {
        Set<Allergen> all = EnumSet.noneOf(Allergen.class);
        Shelf.all().stream()
                .filter(one -> !item.unit().isEmpty() && named(one, item.name()))
                .forEach(one -> all.addAll(one.allergens()));
        return all;
    }

    private static boolean named(Ingredient one, String name) {
        return one.name().equalsIgnoreCase(name)
                || one.aliases().stream().anyMatch(name::equalsIgnoreCase);
    }
}
