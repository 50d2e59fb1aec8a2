package coldwright.terminal.walk;

import static coldwright.terminal.console.ConsoleText.counted;
import static coldwright.terminal.console.ConsoleText.text;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.figure.FigureDescription;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFault;
import coldwright.lesson.LessonPart;
import coldwright.paint.TextPlot;
import coldwright.play.BlockingRunner;
import coldwright.play.ClaimVerdict;
import coldwright.play.LessonPlayer;
import coldwright.play.PlayListener;
import coldwright.play.PlayMode;
import coldwright.play.PlayedStep;
import coldwright.play.SnippetText;
import coldwright.terminal.check.ClaimSentence;
import coldwright.terminal.console.PlainProse;
import coldwright.terminal.console.RunFailureText;
import coldwright.terminal.console.TerminalScreen;
import coldwright.text.DisplayText;

import picocli.CommandLine.Help.Ansi.Style;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/** Walks through a lesson: text, prediction, snippet, output and explanation. */
public final class LessonWalk implements PlayListener {
    private static final String INDENT = "    ";
    private static final String ASIDE = "  | ";

    private final Lesson lesson;
    private final LessonPlayer player;
    private final TerminalScreen screen;
    private final FigureFolder figures;
    private final boolean forTeacher;
    private final WalkWork work;
    private final List<PredictionPrompt> open = new ArrayList<>();
    private PlayedStep step;
    private int failed;
    private int predictions;

    /** Whether all of this step ran and passed. */
    private boolean passes;

    public LessonWalk(
            Lesson lesson,
            BlockingRunner runner,
            TerminalScreen screen,
            FigureFolder figures,
            WalkWork work,
            boolean forTeacher) {
        this.work = work;
        this.lesson = lesson;
        this.player = new LessonPlayer(lesson, PlayMode.LEARN, work::textOf, runner);
        this.screen = screen;
        this.figures = figures;
        this.forTeacher = forTeacher;
    }

    /**
     * Walks through the whole lesson, on request waiting for Enter before each step, and returns
     * the number of snippets that failed.
     */
    public int go(boolean wait) {
        head();
        int from = wait ? work.stoppedAt(lesson).map(this::onFrom).orElse(0) : 0;
        if (from == 0) {
            player.play(0, this);
        }
        int count = lesson.steps().size();
        for (int i = from; i < count && !screen.gone(); i++) {
            boolean resumed = i == from && from > 0;
            if (wait && !resumed && !StepPrompt.isWanted(screen)) {
                return failed;
            }
            player.play(i + 1, this);
        }
        return failed;
    }

    @Override
    public void stepBegan(PlayedStep began) {
        step = began;
        predictions = 0;
        passes = true;
        int number = step.number();
        if (number > 0) {
            work.began(step.name());
            int count = lesson.steps().size();
            String words = lesson.steps().get(number - 1).title();
            title(text("step", number, count, words), '-');
        }
    }

    @Override
    public void stepEnded(PlayedStep ended) {
        if (step.number() > 0) {
            work.ended(step.name(), passes, step.changedAbove() || step.changed());
        }
    }

    /** Asks whether to continue at the step where the last walk stopped; returns where to start. */
    private int onFrom(int stopped) {
        String title = lesson.steps().get(stopped).title();
        if (!StepPrompt.isResumed(screen, stopped + 1, title)) {
            return 0;
        }
        for (int i = 0; i <= stopped; i++) {
            player.skip(i);
        }
        return stopped;
    }

    private void head() {
        if (!lesson.faults().isEmpty()) {
            screen.complain(counted("lesson.faults", lesson.faults().size()));
            lesson.faults().stream().map(LessonFault::toString).forEach(screen::complain);
        }
        title(lesson.title(), '=');
        StringJoiner about = new StringJoiner("; ");
        if (!lesson.track().isEmpty()) {
            about.add(lesson.track());
        }
        if (!lesson.minutes().isEmpty()) {
            about.add(text("minutes", lesson.minutes()));
        }
        if (!lesson.needs().isEmpty()) {
            about.add(text("needs", lesson.needs()));
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
        screen.paragraph(words);
        screen.say("");
    }

    @Override
    public void prose(LessonPart.Prose prose) {
        PlainProse.set(prose.nodes(), screen.width()).forEach(screen::say);
        screen.say("");
    }

    @Override
    public void prediction(LessonPart.Prediction prediction) {
        open.add(ask(prediction));
    }

    /** Answered at once, because no run answers it. */
    @Override
    public void question(LessonPart.Question question) {
        ask(question).reveal(List.of(), screen);
    }

    private PredictionPrompt ask(LessonPart.Asked asked) {
        PredictionPrompt prompt = PredictionPrompt.ask(asked, screen);
        int index = predictions++;
        prompt.answer()
                .ifPresent(said -> work.answered(step.name(), index, asked.question(), said));
        return prompt;
    }

    @Override
    public void teacher(LessonPart.Teacher note) {
        if (forTeacher) {
            screen.say(text("for-teacher"));
            PlainProse.set(note.nodes(), screen.width() - ASIDE.length())
                    .forEach(line -> screen.say((ASIDE + line).stripTrailing()));
            screen.say("");
        }
    }

    @Override
    public void snippet(LessonPart.Snippet snippet) {
        SnippetText code = step.of(snippet);
        if (snippet.given()) {
            screen.say(counted("given", code.text().lines().count()));
        } else {
            if (code.changed()) {
                screen.say(text("as-changed"));
            }
            code.text().lines().forEach(line -> screen.say(Style.fg_cyan, INDENT + line));
        }
        screen.say("");
    }

    @Override
    public void ran(SnippetText snippet, FinishedRun run) {
        if (!run.outcome().finished()) {
            failed++;
            passes = false;
        }
        show(run);
    }

    @Override
    public void answered(List<LessonPart.Prediction> asked, Optional<FinishedRun> run) {
        List<Figure> drawn = run.map(FinishedRun::figures).orElse(List.of());
        open.forEach(prompt -> prompt.reveal(drawn, screen));
        open.clear();
    }

    private void show(FinishedRun run) {
        List<String> lines = new ArrayList<>(run.printed().lines().toList());
        if (run.printedCut()) {
            lines.add(text("output-cut"));
        }
        if (run.outcome() instanceof RunOutcome.Finished finished && finished.gaveValue()) {
            lines.add(text("gives", DisplayText.result(finished.value(), finished.type())));
        }
        RunFailureText.troubles(run.outcome()).forEach(one -> lines.add(one.sentence()));
        lines.forEach(screen::fold);
        if (!lines.isEmpty()) {
            screen.say("");
        }
        run.exhibits().forEach(this::exhibit);
    }

    private void exhibit(Exhibit exhibit) {
        screen.paragraph(text("figure", FigureDescription.describe(exhibit)));
        if (exhibit instanceof Figure figure) {
            TextPlot.of(figure, screen.width() - INDENT.length(), screen.plainPlots())
                    .forEach(line -> screen.say(INDENT + line));
        }
        try {
            for (Path file : figures.write(exhibit)) {
                screen.say(Style.faint, INDENT + file);
            }
        } catch (IOException e) {
            screen.complain(text("figure.not-written", exhibit.title()));
        }
        screen.say("");
    }

    /** Its result appears once its lines were tried. */
    @Override
    public void check(LessonPart.Check check) {}

    @Override
    public void tried(List<ClaimVerdict> verdicts) {
        List<ClaimVerdict> missed = verdicts.stream().filter(one -> !one.passed()).toList();
        int all = verdicts.size();
        passes &= missed.isEmpty();
        if (missed.isEmpty()) {
            paragraph(counted("checked.passed", all));
            return;
        }
        screen.fold(text("checked.missed", all - missed.size(), counted("check-line", all)));
        missed.forEach(verdict -> screen.fold(INDENT + ClaimSentence.of(verdict)));
        screen.say("");
    }
}
