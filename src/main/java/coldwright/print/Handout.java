package coldwright.print;

import static coldwright.print.HtmlMarkup.text;

import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.lesson.CheckExpectation;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPart;
import coldwright.lesson.LessonStep;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.handin.HandedInStep;
import coldwright.workbook.work.StepNames;

import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A lesson as one self-contained HTML text that is also well-formed XML. */
public final class Handout implements LessonPart.Visitor {
    /** A longer text, characters of markup, does not look lost at the foot of a page. */
    private static final int SHORT = 450;

    private final Lesson lesson;
    private final Map<Integer, SnippetOutput> given;
    private final HandoutOptions options;
    private final SourceNotes notes = new SourceNotes();
    private final NumberedFigures exhibits;
    private final StringBuilder html = new StringBuilder();
    private Optional<HandedInStep> handed = Optional.empty();
    private Optional<LessonPart.Prediction> asked = Optional.empty();
    private int snippets;

    /** Whether a run has answered the question asked last. */
    private boolean answered;

    /** Whether the next part is a question. */
    private boolean leadsToQuestion;

    /** Whether this part is the last that stays with the step's heading. */
    private boolean started;

    private Handout(
            Lesson lesson, Map<Integer, SnippetOutput> given, HandoutOptions handoutOptions) {
        this.lesson = lesson;
        this.given = given;
        this.options = handoutOptions;
        this.exhibits = new NumberedFigures(notes, handoutOptions.data());
    }

    /**
     * Writes a lesson as an HTML file, with the output of its snippets by the line of their fence;
     * some may be missing.
     */
    public static String html(
            Lesson lesson, Map<Integer, SnippetOutput> given, HandoutOptions handoutOptions) {
        return new Handout(lesson, Map.copyOf(given), handoutOptions).whole();
    }

    private String whole() {
        String title = HtmlMarkup.escaped(lesson.title());
        html.append("<header>\n");
        if (!lesson.track().isBlank()) {
            html.append("<p class=\"track\">%s</p>\n".formatted(HtmlMarkup.line(lesson.track())));
        }
        html.append("<h1>%s</h1>\n".formatted(title));
        about();
        html.append("</header>\n");
        if (options.edition() == HandoutEdition.FIGURES) {
            List<Exhibit> all =
                    given.entrySet().stream()
                            .sorted(Map.Entry.comparingByKey())
                            .flatMap(one -> one.getValue().exhibits().stream())
                            .toList();
            html.append(exhibits.sheet(all));
            return HandoutStyle.HANDOUT.page(title, options.paper(), html.toString());
        }
        if (!lesson.opening().isEmpty()) {
            html.append("<section>\n");
            step(StepNames.OPENING, "", lesson.opening());
            html.append("</section>\n");
        }
        List<String> names = StepNames.of(lesson);
        for (int i = 0; i < names.size(); i++) {
            LessonStep step = lesson.steps().get(i);
            String heading =
                    "<h2><span class=\"number\">%s</span> %s</h2>\n"
                            .formatted(i + 1, HtmlMarkup.line(step.title()));
            html.append("<section>\n");
            step(names.get(i), heading, step.parts());
            html.append("</section>\n");
        }
        html.append(notes.html());
        return HandoutStyle.HANDOUT.page(title, options.paper(), html.toString());
    }

    private void about() {
        StringBuilder about = new StringBuilder();
        if (!lesson.minutes().isBlank()) {
            about.append(text("minutes", HtmlMarkup.line(lesson.minutes()))).append(' ');
        }
        if (!lesson.needs().isBlank()) {
            about.append(text("needs", HtmlMarkup.line(lesson.needs())));
        }
        if (about.length() > 0) {
            html.append("<p class=\"about\">%s</p>\n".formatted(about));
        }
        String who = options.work().map(HandIn::learner).map(HtmlMarkup::escaped).orElse("");
        if (!who.isEmpty()) {
            html.append("<p class=\"who\">%s <b>%s</b></p>\n".formatted(text("work-of"), who));
        } else if (blank()) {
            html.append(
                    "<p class=\"who\">%s <span class=\"rule\"></span></p>\n"
                            .formatted(text("name")));
        } else if (options.edition() == HandoutEdition.ANSWERS) {
            html.append("<p class=\"who\">%s</p>\n".formatted(text("for-teacher")));
        }
    }

    /** Whether a handout reports a failed snippet. A blank handout shows no output. */
    public static boolean showsTrouble(
            Map<Integer, SnippetOutput> given, HandoutOptions handoutOptions) {
        return handoutOptions.edition() != HandoutEdition.BLANK
                && given.values().stream().anyMatch(one -> !one.trouble().isEmpty());
    }

    private void step(String name, String heading, List<LessonPart> parts) {
        int together = heading.isEmpty() ? 0 : partsWithHeading(parts);
        html.append(together > 0 ? "<div class=\"begin\">\n" : "").append(heading);
        handed = options.work().flatMap(work -> work.step(name));
        snippets = 0;
        answered = false;
        for (int i = 0; i < parts.size(); i++) {
            started = --together == 0;
            leadsToQuestion = i + 1 < parts.size() && parts.get(i + 1) instanceof LessonPart.Asked;
            parts.get(i).accept(this);
            closeHeadingGroup();
        }
        explain();
    }

    /**
     * How many parts stay on the page of the heading: 2 if the first is a short text and something
     * to answer or to run follows (of a snippet only its code), else 0.
     */
    private static int partsWithHeading(List<LessonPart> parts) {
        if (parts.size() < 2) {
            return 0;
        }
        boolean follows =
                parts.get(1) instanceof LessonPart.Asked
                        || parts.get(1) instanceof LessonPart.Snippet;
        return follows
                        && parts.get(0) instanceof LessonPart.Prose prose
                        && HtmlMarkup.prose(prose.nodes()).length() <= SHORT
                ? 2
                : 0;
    }

    @Override
    public void prose(LessonPart.Prose prose) {
        html.append(HtmlMarkup.prose(blank() ? withoutResults(prose) : prose.nodes()));
    }

    /**
     * The blocks that give no answer away: none with a verified number, and after the run that
     * answers a question only cautions and what leads to the next question.
     */
    private List<Node> withoutResults(LessonPart.Prose prose) {
        List<Node> nodes = prose.nodes();
        return nodes.stream()
                .filter(
                        node ->
                                HtmlMarkup.isCaution(node)
                                        || !answered
                                                && prose.verifiedNumbers().stream()
                                                        .noneMatch(one -> isIn(node, one.line()))
                                        || answered
                                                && leadsToQuestion
                                                && node == nodes.get(nodes.size() - 1))
                .toList();
    }

    private static boolean isIn(Node node, int line) {
        List<SourceSpan> spans = node.getSourceSpans();
        return spans.get(0).getLineIndex() < line
                && line <= spans.get(spans.size() - 1).getLineIndex() + 1;
    }

    private boolean blank() {
        return options.edition() == HandoutEdition.BLANK;
    }

    @Override
    public void teacher(LessonPart.Teacher note) {
        if (options.edition() == HandoutEdition.ANSWERS) {
            html.append(
                    "<aside class=\"teacher\">\n<p class=\"for\">%s</p>\n"
                            .formatted(text("for-teacher")));
            html.append(HtmlMarkup.prose(note.nodes())).append("</aside>\n");
        }
    }

    @Override
    public void prediction(LessonPart.Prediction prediction) {
        explain();
        String said = handed.map(step -> step.answer(prediction.question())).orElse("");
        html.append(QuestionSheet.html(prediction, options.edition(), said, exhibits));
        asked = Optional.of(prediction);
        answered = false;
    }

    /** Its explanation would give the answer away, so only the teacher's edition has it. */
    @Override
    public void question(LessonPart.Question question) {
        explain();
        String said = handed.map(step -> step.answer(question.question())).orElse("");
        html.append(QuestionSheet.html(question, options.edition(), said, exhibits));
        if (options.edition() == HandoutEdition.ANSWERS) {
            html.append(HtmlMarkup.prose(question.explanation()));
        }
    }

    /** Closes the group that stays with the step's heading, if this part is its last. */
    private void closeHeadingGroup() {
        html.append(started ? "</div>\n" : "");
        started = false;
    }

    private void explain() {
        if (!blank()) {
            asked.map(prediction -> HtmlMarkup.prose(prediction.explanation()))
                    .ifPresent(html::append);
        }
        asked = Optional.empty();
    }

    @Override
    public void snippet(LessonPart.Snippet snippet) {
        int index = snippets++;
        String own = handed.flatMap(step -> step.text(index)).orElse(snippet.code());
        boolean toChange =
                !snippet.solution().isEmpty()
                        || !own.equals(snippet.code())
                        || asked.isEmpty() && !answered && !snippet.dials().isEmpty();
        html.append(blank() && !toChange ? "" : HtmlMarkup.java(own));
        closeHeadingGroup();
        answered |= asked.isPresent() && !snippet.given();
        outcome(snippet);
        if (!snippet.given()) {
            explain();
        }
    }

    private void outcome(LessonPart.Snippet snippet) {
        SnippetOutput came = given.getOrDefault(snippet.line(), SnippetOutput.NOTHING);
        if (blank()) {
            boolean silent = came.silent() && given.containsKey(snippet.line());
            if (!snippet.given() && !silent) {
                html.append(QuestionSheet.room(frames(came), !came.words().isEmpty(), exhibits));
            }
            return;
        }
        words(came);
        if (!came.trouble().isEmpty()) {
            html.append("<p class=\"trouble\">%s</p>\n".formatted(HtmlMarkup.line(came.trouble())));
        }
        came.exhibits().forEach(one -> html.append(exhibits.html(one)));
        if (options.edition() == HandoutEdition.ANSWERS && !snippet.solution().isEmpty()) {
            html.append(
                            "<div class=\"solution\">\n<p class=\"label\">%s</p>\n"
                                    .formatted(text("one-solution")))
                    .append(HtmlMarkup.java(snippet.solution()));
            came.solved().ifPresent(this::words);
            html.append("</div>\n");
        }
    }

    private static List<Figure> frames(SnippetOutput came) {
        return came.exhibits().stream()
                .filter(Figure.class::isInstance)
                .map(one -> NumberedFigures.frame((Figure) one))
                .toList();
    }

    private void words(SnippetOutput came) {
        if (!came.words().isEmpty()) {
            html.append(
                    "<pre class=\"came\">%s</pre>\n".formatted(HtmlMarkup.escaped(came.words())));
        }
    }

    @Override
    public void check(LessonPart.Check check) {
        if (options.edition() != HandoutEdition.ANSWERS || check.expectations().isEmpty()) {
            return;
        }
        html.append(
                "<div class=\"check\">\n<p class=\"label\">%s</p>\n<ul>\n"
                        .formatted(text("checks")));
        for (CheckExpectation one : check.expectations()) {
            html.append(
                    "<li><code>%s</code> %s"
                            .formatted(HtmlMarkup.escaped(one.expression()), wanted(one)));
            if (one.namesPublishedSource()) {
                html.append(notes.mark(one.source()));
            } else if (!one.source().isBlank()) {
                html.append(" – <i>%s</i>".formatted(HtmlMarkup.line(one.source())));
            }
            html.append("</li>\n");
        }
        html.append("</ul>\n</div>\n");
    }

    private static String wanted(CheckExpectation one) {
        return one.match(
                value ->
                        text(
                                "is-within",
                                QuestionSheet.number(value.value()),
                                QuestionSheet.number(value.tolerance())),
                truth -> text("is-true"),
                number -> "");
    }
}
