package coldwright.print;

import coldwright.figure.Figure;
import coldwright.lesson.Expectation;
import coldwright.lesson.Lesson;
import coldwright.lesson.Part;
import coldwright.lesson.Step;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.handin.HandedStep;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A lesson as one HTML text, which is complete in itself and well-formed XML too. */
public final class Handout {
    private final Lesson lesson;
    private final Map<Integer, Given> given;
    private final Wish wish;
    private final Notes notes = new Notes();
    private final Exhibits exhibits;
    private final StringBuilder html = new StringBuilder();
    private Optional<HandedStep> handed = Optional.empty();
    private int snippets;

    /** Whether the part being set is the last of a step's beginning. */
    private boolean begun;

    private Handout(Lesson lesson, Map<Integer, Given> given, Wish wish) {
        this.lesson = lesson;
        this.given = given;
        this.wish = wish;
        this.exhibits = new Exhibits(notes, wish.data());
    }

    /**
     * Sets a lesson.
     *
     * @param lesson the lesson
     * @param given what its snippets gave, by the line where their fence stands; may lack any
     * @param wish how it is wanted
     * @return the whole text of an HTML file
     */
    public static String html(Lesson lesson, Map<Integer, Given> given, Wish wish) {
        return new Handout(lesson, Map.copyOf(given), wish).whole();
    }

    private String whole() {
        String title = Markup.escaped(lesson.title());
        html.append("<header>\n");
        if (!lesson.track().isBlank()) {
            html.append("<p class=\"track\">%s</p>\n".formatted(Markup.line(lesson.track())));
        }
        html.append("<h1>%s</h1>\n".formatted(title));
        about();
        html.append("</header>\n");
        if (!lesson.opening().isEmpty()) {
            html.append("<section>\n");
            step("", "", lesson.opening());
            html.append("</section>\n");
        }
        for (int i = 0; i < lesson.steps().size(); i++) {
            Step step = lesson.steps().get(i);
            String heading =
                    "<h2><span class=\"number\">%d</span> %s</h2>\n"
                            .formatted(i + 1, Markup.line(step.title()));
            html.append("<section>\n");
            step(step.title(), heading, step.parts());
            html.append("</section>\n");
        }
        html.append(notes.html());
        return Look.HANDOUT.page(title, wish.paper(), html.toString());
    }

    private void about() {
        StringBuilder about = new StringBuilder();
        if (!lesson.minutes().isBlank()) {
            about.append(Markup.line(lesson.minutes())).append("\u00A0minutes. ");
        }
        if (!lesson.needs().isBlank()) {
            about.append("You need ").append(Markup.line(lesson.needs())).append('.');
        }
        if (about.length() > 0) {
            html.append("<p class=\"about\">%s</p>\n".formatted(about));
        }
        String who = wish.work().map(HandIn::learner).map(Markup::escaped).orElse("");
        if (!who.isEmpty()) {
            html.append("<p class=\"who\">Work of <b>%s</b></p>\n".formatted(who));
        } else if (wish.edition() == Edition.BLANK) {
            html.append("<p class=\"who\">Name <span class=\"rule\"></span></p>\n");
        } else if (wish.edition() == Edition.ANSWERS) {
            html.append("<p class=\"who\">For the teacher</p>\n");
        }
    }

    /**
     * Whether a handout says of a snippet that it did not end well.
     *
     * @param given what each snippet gave
     * @param wish how it is wanted; a page to write on says nothing of what came out
     * @return true if so
     */
    public static boolean tellsTrouble(Map<Integer, Given> given, Wish wish) {
        return wish.edition() != Edition.BLANK
                && given.values().stream().anyMatch(one -> !one.trouble().isEmpty());
    }

    private void step(String name, String heading, List<Part> parts) {
        int together = heading.isEmpty() ? 0 : Begin.partsOf(parts);
        html.append(together > 0 ? "<div class=\"begin\">\n" : "").append(heading);
        handed = wish.work().flatMap(work -> work.step(name));
        snippets = 0;
        Optional<Part.Forecast> asked = Optional.empty();
        for (Part part : parts) {
            begun = --together == 0;
            if (part instanceof Part.Prose prose) {
                html.append(Markup.prose(prose.nodes()));
            } else if (part instanceof Part.Forecast forecast) {
                explain(asked);
                html.append(Questions.html(forecast, wish.edition(), saidTo(forecast), exhibits));
                asked = Optional.of(forecast);
            } else if (part instanceof Part.Snippet snippet) {
                snippet(snippet);
                if (!snippet.given()) {
                    explain(asked);
                    asked = Optional.empty();
                }
            } else if (part instanceof Part.Check check) {
                check(check);
            } else if (part instanceof Part.Teacher note) {
                if (wish.edition() == Edition.ANSWERS) {
                    html.append(
                            "<aside class=\"teacher\">\n<p class=\"for\">For the teacher</p>\n");
                    html.append(Markup.prose(note.nodes())).append("</aside>\n");
                }
            } else {
                throw new AssertionError(part);
            }
            endBegin();
        }
        explain(asked);
    }

    /** Closes what stays together at a step's beginning, if this part is the last of it. */
    private void endBegin() {
        html.append(begun ? "</div>\n" : "");
        begun = false;
    }

    private String saidTo(Part.Forecast forecast) {
        return handed.map(step -> step.said(forecast.question())).orElse("");
    }

    private void explain(Optional<Part.Forecast> asked) {
        if (wish.edition() != Edition.BLANK) {
            asked.map(forecast -> Markup.prose(forecast.explanation())).ifPresent(html::append);
        }
    }

    private void snippet(Part.Snippet snippet) {
        int index = snippets++;
        String own = handed.flatMap(step -> step.text(index)).orElse(snippet.code());
        html.append(Markup.java(own));
        endBegin();
        Given came = given.getOrDefault(snippet.line(), Given.NOTHING);
        if (wish.edition() == Edition.BLANK) {
            boolean silent = came.silent() && given.containsKey(snippet.line());
            if (!snippet.given() && !silent) {
                html.append(Questions.room(frames(came), !came.words().isEmpty(), exhibits));
            }
            return;
        }
        words(came);
        if (!came.trouble().isEmpty()) {
            html.append("<p class=\"trouble\">%s</p>\n".formatted(Markup.line(came.trouble())));
        }
        came.exhibits().forEach(one -> html.append(exhibits.html(one)));
        if (wish.edition() == Edition.ANSWERS && !snippet.solution().isEmpty()) {
            html.append("<div class=\"solution\">\n<p class=\"label\">One solution</p>\n")
                    .append(Markup.java(snippet.solution()));
            came.solved().ifPresent(this::words);
            html.append("</div>\n");
        }
    }

    private static List<Figure> frames(Given came) {
        return came.exhibits().stream()
                .filter(Figure.class::isInstance)
                .map(one -> Exhibits.frame((Figure) one))
                .toList();
    }

    private void words(Given came) {
        if (!came.words().isEmpty()) {
            html.append("<pre class=\"came\">%s</pre>\n".formatted(Markup.escaped(came.words())));
        }
    }

    private void check(Part.Check check) {
        if (wish.edition() != Edition.ANSWERS || check.expectations().isEmpty()) {
            return;
        }
        html.append("<div class=\"check\">\n<p class=\"label\">What is checked</p>\n<ul>\n");
        for (Expectation one : check.expectations()) {
            html.append(
                    "<li><code>%s</code> %s"
                            .formatted(Markup.escaped(one.expression()), wanted(one)));
            if (one.namesPublishedSource()) {
                html.append(notes.mark(one.source()));
            } else if (!one.source().isBlank()) {
                html.append(" – <i>%s</i>".formatted(Markup.line(one.source())));
            }
            html.append("</li>\n");
        }
        html.append("</ul>\n</div>\n");
    }

    private static String wanted(Expectation one) {
        return one instanceof Expectation.Value value
                ? "is %s within %s"
                        .formatted(
                                Questions.number(value.value()),
                                Questions.number(value.tolerance()))
                : "is true";
    }
}
