package coldwright.terminal.walk;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.figure.FigureDescription;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFault;
import coldwright.lesson.LessonPart;
import coldwright.paint.TextPlot;
import coldwright.terminal.check.ClaimTrial;
import coldwright.terminal.check.ClaimVerdict;
import coldwright.terminal.check.LessonClaim;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.PlainProse;
import coldwright.terminal.console.RunFailureText;
import coldwright.terminal.console.TerminalScreen;
import coldwright.text.DisplayText;
import coldwright.workbook.work.StepNames;

import picocli.CommandLine.Help.Ansi.Style;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/** Goes through a lesson: text, forecast, snippet, what it gave, and why. */
public final class LessonWalk {
    private static final String INDENT = "    ";
    private static final String ASIDE = "  | ";

    /** The type of a line that printed; what it gives is of no interest. */
    private static final String PRINTING = "PrintStream";

    private final Lesson lesson;
    private final BlockingBench blockingBench;
    private final TerminalScreen screen;
    private final FigureFolder figures;
    private final boolean forTeacher;
    private final WalkWork work;
    private final List<String> above = new ArrayList<>();
    private final List<PredictionPrompt> open = new ArrayList<>();
    private int failed;
    private String step = StepNames.OPENING;
    private int snippets;
    private int predictions;

    /** Whether all of this step ran and held. */
    private boolean passes;

    /** Whether a snippet so far is the learner's own. */
    private boolean changed;

    public LessonWalk(
            Lesson lesson,
            BlockingBench blockingBench,
            TerminalScreen screen,
            FigureFolder figures,
            WalkWork work,
            boolean forTeacher) {
        this.work = work;
        this.lesson = lesson;
        this.blockingBench = blockingBench;
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
    public int go(boolean wait) {
        head();
        int from = wait ? work.stoppedAt(lesson).map(this::onFrom).orElse(0) : 0;
        if (from == 0) {
            parts(lesson.opening());
        }
        List<String> names = StepNames.of(lesson);
        int count = names.size();
        for (int i = from; i < count && !screen.gone(); i++) {
            boolean resumed = i == from && from > 0;
            if (wait && !resumed && !StepPrompt.isWanted(screen)) {
                return failed;
            }
            start(names.get(i));
            work.began(step);
            title("%d of %d. %s".formatted(i + 1, count, lesson.steps().get(i).title()), '-');
            parts(lesson.steps().get(i).parts());
            work.ended(step, passes, changed);
        }
        return failed;
    }

    private void start(String name) {
        step = name;
        snippets = 0;
        predictions = 0;
        passes = true;
    }

    /** Whether to go on at the step where the last walk stopped; its place, or the beginning. */
    private int onFrom(int stopped) {
        Optional<String> line =
                screen.ask(
                        "You stopped at step %d, \"%s\". Enter to go on there, b to begin again:"
                                .formatted(stopped + 1, lesson.steps().get(stopped).title()));
        screen.say("");
        if (line.filter(words -> words.strip().equalsIgnoreCase("b")).isPresent()) {
            return 0;
        }
        passOver(lesson.opening());
        for (int i = 0; i < stopped; i++) {
            start(StepNames.of(lesson).get(i));
            passOver(lesson.steps().get(i).parts());
        }
        return stopped;
    }

    /** What was walked before runs again, silently, for what follows stands on it. */
    private void passOver(List<LessonPart> parts) {
        for (LessonPart part : parts) {
            if (part instanceof LessonPart.Snippet snippet) {
                String code = work.textOf(step, snippets++, snippet.code());
                changed |= !code.equals(snippet.code());
                if (blockingBench.run(above, code).outcome().finished()) {
                    above.add(code);
                }
            }
        }
    }

    private void head() {
        if (!lesson.faults().isEmpty()) {
            int count = lesson.faults().size();
            screen.complain(
                    count == 1
                            ? "The lesson has a fault:"
                            : "The lesson has " + count + " faults:");
            lesson.faults().stream().map(LessonFault::toString).forEach(screen::complain);
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
        List<String> lines = PlainProse.wrap(words, screen.width());
        lines.forEach(one -> screen.say(Style.bold, one));
        int longest = lines.stream().mapToInt(String::length).max().orElse(0);
        screen.say(String.valueOf(line).repeat(longest));
        screen.say("");
    }

    private void paragraph(String words) {
        screen.printError(words);
        screen.say("");
    }

    private void parts(List<LessonPart> parts) {
        for (LessonPart part : parts) {
            part(part);
        }
        reveal(List.of());
    }

    private void part(LessonPart part) {
        if (part instanceof LessonPart.Prose prose) {
            PlainProse.set(prose.nodes(), screen.width()).forEach(screen::say);
            screen.say("");
        } else if (part instanceof LessonPart.Prediction prediction) {
            PredictionPrompt predictionPrompt = PredictionPrompt.ask(prediction, screen);
            int index = predictions++;
            predictionPrompt
                    .answer()
                    .ifPresent(
                            learnerAnswer ->
                                    work.answered(
                                            step, index, prediction.question(), learnerAnswer));
            open.add(predictionPrompt);
        } else if (part instanceof LessonPart.Snippet snippet) {
            snippet(snippet);
        } else if (part instanceof LessonPart.Check check) {
            check(check);
        } else if (part instanceof LessonPart.Teacher note) {
            if (forTeacher) {
                teacher(note);
            }
        } else {
            throw new AssertionError(part);
        }
    }

    private void teacher(LessonPart.Teacher note) {
        screen.say("For the teacher:");
        PlainProse.set(note.nodes(), screen.width() - ASIDE.length())
                .forEach(line -> screen.say((ASIDE + line).stripTrailing()));
        screen.say("");
    }

    private void snippet(LessonPart.Snippet snippet) {
        String code = work.textOf(step, snippets++, snippet.code());
        boolean own = !code.equals(snippet.code());
        changed |= own;
        if (snippet.given()) {
            long lines = code.lines().count();
            screen.say(
                    lines == 1
                            ? "(A line of Java is given and runs first.)"
                            : "(%d lines of Java are given and run first.)".formatted(lines));
        } else {
            if (own) {
                screen.say("(As you changed it in the window.)");
            }
            code.lines().forEach(line -> screen.say(Style.fg_cyan, INDENT + line));
        }
        screen.say("");
        FinishedRun run = blockingBench.run(above, code);
        if (run.outcome().finished()) {
            above.add(code);
        } else {
            failed++;
            passes = false;
        }
        show(run);
        if (!snippet.given()) {
            reveal(run.figures());
        }
    }

    private void show(FinishedRun run) {
        List<String> lines = new ArrayList<>(run.printed().lines().toList());
        if (run.printedCut()) {
            lines.add("… and more than is kept");
        }
        if (run.outcome() instanceof RunOutcome.Finished finished
                && !finished.value().isEmpty()
                && !finished.type().endsWith(PRINTING)) {
            lines.add("gives " + DisplayText.result(finished.value(), finished.type()));
        }
        for (RunFailureText.RunFailure runFailure : RunFailureText.troubles(run.outcome())) {
            String where = runFailure.line() > 0 ? "Line " + runFailure.line() + ": " : "";
            lines.add(where + runFailure.words());
        }
        lines.forEach(screen::fold);
        if (!lines.isEmpty()) {
            screen.say("");
        }
        run.exhibits().forEach(this::exhibit);
    }

    private void exhibit(Exhibit exhibit) {
        screen.printError("Figure. " + FigureDescription.describe(exhibit));
        if (exhibit instanceof Figure figure) {
            TextPlot.of(figure, screen.width() - INDENT.length(), screen.plainPlots())
                    .forEach(line -> screen.say(INDENT + line));
        }
        try {
            for (Path file : figures.write(exhibit)) {
                screen.say(Style.faint, INDENT + file);
            }
        } catch (IOException e) {
            screen.complain(
                    "The figure \"%s\" can't be written; look whether the disk is full or the folder is locked."
                            .formatted(exhibit.title()));
        }
        screen.say("");
    }

    private void check(LessonPart.Check check) {
        List<LessonClaim> claims = check.expectations().stream().map(LessonClaim::of).toList();
        List<ClaimVerdict> verdicts = ClaimTrial.of(claims, above, blockingBench);
        List<ClaimVerdict> missed =
                verdicts.stream().filter(claimVerdict -> !claimVerdict.passed()).toList();
        int all = verdicts.size();
        passes &= missed.isEmpty();
        if (missed.isEmpty()) {
            String what =
                    all == 1 ? "1 line holds" : all == 2 ? "both lines hold" : "all %d lines hold";
            paragraph("Checked: " + what.formatted(all) + ".");
            return;
        }
        int held = all - missed.size();
        screen.say(
                all == 1
                        ? "Checked: 1 line does not hold yet:"
                        : "Checked: %d of %d lines hold. Not yet:".formatted(held, all));
        missed.forEach(claimVerdict -> screen.fold(INDENT + claimVerdict.sentence()));
        screen.say("");
    }

    private void reveal(List<Figure> drawn) {
        open.forEach(predictionPrompt -> predictionPrompt.reveal(drawn, screen));
        open.clear();
    }
}
