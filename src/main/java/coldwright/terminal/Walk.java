package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.bench.Run;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.figure.FigureText;
import coldwright.lesson.Fault;
import coldwright.lesson.Lesson;
import coldwright.lesson.Part;
import coldwright.lesson.Step;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/** Goes through a lesson: text, forecast, snippet, what it gave, and why. */
final class Walk {
    private static final String INDENT = "    ";
    private static final String ASIDE = "  | ";

    /** The type of a line that printed; what it gives is of no interest. */
    private static final String PRINTING = "PrintStream";

    private final Lesson lesson;
    private final Runs runs;
    private final Screen screen;
    private final FigureFolder figures;
    private final boolean forTeacher;
    private final List<String> above = new ArrayList<>();
    private final List<Asked> open = new ArrayList<>();
    private int failed;

    Walk(Lesson lesson, Runs runs, Screen screen, FigureFolder figures, boolean forTeacher) {
        this.lesson = lesson;
        this.runs = runs;
        this.screen = screen;
        this.figures = figures;
        this.forTeacher = forTeacher;
    }

    /**
     * Goes through the whole lesson.
     *
     * @param wait whether to wait for Enter before each step
     * @return how many snippets failed
     */
    int go(boolean wait) {
        head();
        parts(lesson.opening());
        int count = lesson.steps().size();
        for (int i = 0; i < count && !screen.gone(); i++) {
            if (wait && !goesOn()) {
                break;
            }
            Step step = lesson.steps().get(i);
            title("%d of %d. %s".formatted(i + 1, count, step.title()), '-');
            parts(step.parts());
        }
        return failed;
    }

    private void head() {
        if (!lesson.faults().isEmpty()) {
            int count = lesson.faults().size();
            screen.complain(
                    count == 1
                            ? "The lesson has a fault:"
                            : "The lesson has " + count + " faults:");
            lesson.faults().stream().map(Fault::toString).forEach(screen::complain);
        }
        title(lesson.title(), '=');
        StringJoiner about = new StringJoiner("; ");
        if (!lesson.track().isEmpty()) {
            about.add(lesson.track());
        }
        if (!lesson.minutes().isEmpty()) {
            about.add(lesson.minutes() + " minutes");
        }
        if (!lesson.needs().isEmpty()) {
            about.add("you need " + lesson.needs());
        }
        if (about.length() > 0) {
            paragraph(about + ".");
        }
    }

    private void title(String words, char line) {
        List<String> lines = ProseText.wrap(words, screen.width());
        lines.forEach(screen::say);
        int longest = lines.stream().mapToInt(String::length).max().orElse(0);
        screen.say(String.valueOf(line).repeat(longest));
        screen.say("");
    }

    private void paragraph(String words) {
        ProseText.wrap(words, screen.width()).forEach(screen::say);
        screen.say("");
    }

    private boolean goesOn() {
        Optional<String> line =
                screen.asker().flatMap(asker -> asker.ask("Enter for the next step, q to stop: "));
        screen.say("");
        return line.isPresent() && !line.get().strip().equalsIgnoreCase("q");
    }

    private void parts(List<Part> parts) {
        for (Part part : parts) {
            part(part);
        }
        reveal(List.of());
    }

    private void part(Part part) {
        if (part instanceof Part.Prose prose) {
            ProseText.set(prose.nodes(), screen.width()).forEach(screen::say);
            screen.say("");
        } else if (part instanceof Part.Forecast forecast) {
            open.add(Asked.ask(forecast, screen));
        } else if (part instanceof Part.Snippet snippet) {
            snippet(snippet);
        } else if (part instanceof Part.Check check) {
            check(check);
        } else if (part instanceof Part.Teacher note) {
            if (forTeacher) {
                teacher(note);
            }
        } else {
            throw new AssertionError(part);
        }
    }

    private void teacher(Part.Teacher note) {
        screen.say("For the teacher:");
        ProseText.set(note.nodes(), screen.width() - ASIDE.length())
                .forEach(line -> screen.say((ASIDE + line).stripTrailing()));
        screen.say("");
    }

    private void snippet(Part.Snippet snippet) {
        if (snippet.given()) {
            long lines = snippet.code().lines().count();
            screen.say(
                    lines == 1
                            ? "(A line of Java is given and runs first.)"
                            : "(%d lines of Java are given and run first.)".formatted(lines));
        } else {
            snippet.code().lines().forEach(line -> screen.say(INDENT + line));
        }
        screen.say("");
        Run run = runs.run(above, snippet.code());
        if (run.outcome().finished()) {
            above.add(snippet.code());
        } else {
            failed++;
        }
        show(run);
        if (!snippet.given()) {
            reveal(run.figures());
        }
    }

    private void show(Run run) {
        List<String> lines = new ArrayList<>(run.printed().lines().toList());
        if (run.printedCut()) {
            lines.add("… and more than is kept");
        }
        if (run.outcome() instanceof Outcome.Finished finished
                && !finished.value().isEmpty()
                && !finished.type().endsWith(PRINTING)) {
            lines.add("gives " + finished.value());
        }
        for (Ending.Trouble trouble : Ending.troubles(run.outcome())) {
            String where = trouble.line() > 0 ? "Line " + trouble.line() + ": " : "";
            lines.addAll(ProseText.wrap(where + trouble.words(), screen.width()));
        }
        lines.forEach(screen::say);
        if (!lines.isEmpty()) {
            screen.say("");
        }
        run.exhibits().forEach(this::exhibit);
    }

    private void exhibit(Exhibit exhibit) {
        ProseText.wrap("Figure. " + FigureText.describe(exhibit), screen.width())
                .forEach(screen::say);
        try {
            for (Path file : figures.write(exhibit)) {
                screen.say(INDENT + file);
            }
        } catch (IOException e) {
            screen.complain(
                    "The figure \"%s\" can't be written; look whether the disk is full or the folder is locked."
                            .formatted(exhibit.title()));
        }
        screen.say("");
    }

    private void check(Part.Check check) {
        List<Claim> claims = check.expectations().stream().map(Claim::of).toList();
        List<Verdict> verdicts = Trial.of(claims, above, runs);
        List<Verdict> missed = verdicts.stream().filter(verdict -> !verdict.held()).toList();
        int all = verdicts.size();
        if (missed.isEmpty()) {
            paragraph(
                    all == 1 ? "Checked: it holds." : "Checked: all %d lines hold.".formatted(all));
            return;
        }
        screen.say("Checked: %d of %d lines hold. Not yet:".formatted(all - missed.size(), all));
        missed.forEach(verdict -> screen.say(INDENT + verdict.sentence()));
        screen.say("");
    }

    private void reveal(List<Figure> drawn) {
        open.forEach(asked -> asked.reveal(drawn, screen));
        open.clear();
    }
}
