package coldwright.print;

import static coldwright.print.HtmlMarkup.text;

import coldwright.lesson.KitItem;
import coldwright.lesson.Lesson;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Shelf;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * What 1 to 999 learners have to buy and to have ready for the kitchen trials of some lessons.
 * Bought things add up over the lessons. Equipment is used again, so the lesson that needs most of
 * it counts.
 */
public record KitList(List<Lesson> lessons, int learners) {
    /** Refuses another number of learners than 1 to 999. */
    public KitList {
        lessons = List.copyOf(lessons);
        if (learners < 1 || learners > 999) {
            throw new IllegalArgumentException(text("kit.learners", learners));
        }
    }

    /** Its lists, each under its heading. */
    Map<String, List<String>> sections() {
        Map<String, List<String>> sections = new LinkedHashMap<>();
        sections.put(text("kit.trials"), lessons.stream().map(KitList::trial).toList());
        sections.put(text("kit.buy"), lines(one -> one.unit().matches("g|mL|pieces")));
        sections.put(text("kit.allergens"), allergenLines());
        sections.put(text("kit.ready"), lines(one -> one.unit().isEmpty()));
        return sections;
    }

    /** The list as text, a line each. */
    public List<String> plain() {
        List<String> all = new ArrayList<>(List.of(title()));
        sections()
                .forEach(
                        (heading, lines) -> {
                            all.addAll(List.of("", heading));
                            lines.forEach(line -> all.add("  " + line));
                        });
        return all;
    }

    /** The list as one self-contained HTML text. */
    public String html(PaperSize paper) {
        StringBuilder html = new StringBuilder("<h1>" + title() + "</h1>\n");
        sections()
                .forEach(
                        (heading, lines) ->
                                html.append("<section>\n<h2>%s</h2>\n<ul>\n".formatted(heading))
                                        .append(
                                                lines.stream()
                                                        .map(HtmlMarkup::escaped)
                                                        .map("<li>%s</li>\n"::formatted)
                                                        .collect(Collectors.joining()))
                                        .append("</ul>\n</section>\n"));
        return HandoutStyle.HANDOUT.page(title(), paper, html.toString());
    }

    private String title() {
        return text(learners == 1 ? "kit.title.one" : "kit.title.many", learners);
    }

    private static String trial(Lesson lesson) {
        return lesson.kit().stream()
                .filter(one -> one.unit().equals("min"))
                .findFirst()
                .map(one -> text("kit.work", lesson.title(), QuestionSheet.number(one.amount())))
                .orElseGet(() -> text("kit.no-trial", lesson.title()));
    }

    private Stream<KitItem> items() {
        return lessons.stream().flatMap(lesson -> lesson.kit().stream());
    }

    /** A line for each different thing of a kind, in the order of the lessons. */
    private List<String> lines(Predicate<KitItem> kind) {
        Map<String, KitItem> different = new LinkedHashMap<>();
        items().filter(kind).forEach(one -> different.putIfAbsent(one.unit() + one.name(), one));
        return different.values().stream().map(this::line).toList();
    }

    private String line(KitItem item) {
        DoubleStream each = lessons.stream().mapToDouble(lesson -> needed(item, lesson));
        boolean bought = !item.unit().isEmpty();
        double amount = bought ? each.sum() : each.max().orElse(0);
        boolean kilos = item.unit().equals("g") && amount >= 1000;
        double shown = kilos ? Math.ceil(amount / 10) / 100 : Math.ceil(amount * 10) / 10;
        String unit = kilos ? "kg" : item.unit().matches("g|mL") ? item.unit() : "×";
        String line = "%s %s %s".formatted(QuestionSheet.number(shown), unit, named(item));
        boolean roughly = items().anyMatch(one -> one.isLike(item) && one.roughly());
        return bought
                ? roughly ? text("kit.about", line) : line
                : switch (item.learners()) {
                    case 0 -> text("kit.for-all", line);
                    case 1 -> line;
                    default -> text("kit.shared", line, item.learners());
                };
    }

    /** The name in the language shown, of things in the course's lessons, else the lesson's. */
    private static String named(KitItem item) {
        String key = "kit.thing." + item.name().replaceAll("[^a-z0-9]+", "-");
        String shown = text(key);
        return shown.equals(key) ? item.name() : shown;
    }

    private double needed(KitItem item, Lesson lesson) {
        return lesson.kit().stream()
                .filter(item::isLike)
                .mapToDouble(one -> one.amount() * one.times(learners))
                .sum();
    }

    private List<String> allergenLines() {
        Map<Allergen, Set<String>> found = new EnumMap<>(Allergen.class);
        for (KitItem item : items().toList()) {
            for (Allergen one : allergens(item)) {
                found.computeIfAbsent(one, any -> new TreeSet<>()).add(named(item));
            }
        }
        return found.entrySet().stream()
                .map(
                        one ->
                                one.getKey().phrase().shown()
                                        + ": "
                                        + String.join(", ", one.getValue()))
                .toList();
    }

    /** The allergens that something to buy usually contains, if it is on the shelf. */
    public static Set<Allergen> allergens(KitItem item) {
        return Shelf.all().stream()
                .filter(one -> !item.unit().isEmpty())
                .filter(
                        one ->
                                one.name().equals(item.name())
                                        || one.aliases().contains(item.name()))
                .flatMap(one -> one.allergens().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
