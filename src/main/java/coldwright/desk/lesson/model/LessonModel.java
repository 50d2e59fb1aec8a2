package coldwright.desk.lesson.model;

import coldwright.bench.SnippetProblem;
import coldwright.desk.figure.model.PinnedFigures;
import coldwright.desk.run.RunContext;
import coldwright.desk.run.RunGate;
import coldwright.desk.run.SnippetDependencies;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFault;
import coldwright.lesson.LessonStep;
import coldwright.workbook.work.LessonKey;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** An open lesson: edits, runs and progress stay while the program runs. */
public final class LessonModel {
    private final Lesson lesson;
    private final LessonKey key;
    private final PinnedFigures pinnedFigures = new PinnedFigures();
    private final RunGate gate;
    private final StepModel opening;
    private final List<StepModel> steps;
    private final List<SnippetModel> snippets;
    private final RunChain chain = new RunChain();
    private final SnippetDependencies snippetDependencies = new SnippetDependencies();
    private final BooleanProperty written = new SimpleBooleanProperty(false);
    private final ReadOnlyObjectWrapper<StepModel> inSight = new ReadOnlyObjectWrapper<>();
    private final ObjectProperty<Instant> lastUsed = new SimpleObjectProperty<>();

    public LessonModel(Lesson lesson, LessonKey key, RunContext runContext) {
        this.lesson = lesson;
        this.key = key;
        this.gate = runContext.gate();
        List<SnippetModel> before = new ArrayList<>();
        LessonStep front = new LessonStep(lesson.title(), 1, lesson.opening());
        this.opening = new StepModel(front, 0, runContext, List.of());
        before.addAll(opening.snippets());
        List<StepModel> made = new ArrayList<>();
        for (LessonStep step : lesson.steps()) {
            StepModel model = new StepModel(step, made.size() + 1, runContext, List.copyOf(before));
            made.add(model);
            before.addAll(model.snippets());
        }
        this.steps = List.copyOf(made);
        this.inSight.set(steps.isEmpty() ? opening : steps.get(0));
        this.snippets = List.copyOf(before);
        chain.watch(snippets);
        snippets.forEach(this::listen);
    }

    private void listen(SnippetModel snippet) {
        snippet.text().addListener((value, was, is) -> judge());
        snippet.result()
                .lastRun()
                .addListener((value, was, is) -> snippet.judge(snippetDependencies));
        snippet.whenTurned(
                () ->
                        below(snippet).stream()
                                .skip(1)
                                .forEach(one -> one.follow(snippetDependencies)));
        snippet.whenRested(() -> runDependents(snippet));
    }

    private void judge() {
        snippets.forEach(snippet -> snippet.judge(snippetDependencies));
    }

    /** A dial rests: runs the snippets again that ran before and depend on it. */
    private void runDependents(SnippetModel turned) {
        chain.run(
                below(turned).stream()
                        .filter(one -> one == turned || hangsOnAChange(one.result()))
                        .toList());
    }

    private static boolean hangsOnAChange(SnippetResult snippetResult) {
        return snippetResult.everFinished().get() && snippetResult.outOfDate().get();
    }

    private List<SnippetModel> below(SnippetModel from) {
        return snippets.subList(snippets.indexOf(from), snippets.size());
    }

    /** Runs every snippet of the lesson, from the top, until one fails. */
    public void runAll() {
        chain.run(snippets);
    }

    /** Runs a snippet and all below it, until one fails. */
    public void runFrom(SnippetModel from) {
        chain.run(below(from));
    }

    public RunChain chain() {
        return chain;
    }

    /** The learner has come to a step: runs its given snippets. */
    public void arrive(StepModel step) {
        inSight.set(step);
        step.runGiven();
    }

    /** The step some steps after the one in sight, or before it if negative. */
    public Optional<StepModel> stepBy(int by) {
        int to = steps.indexOf(inSight.get()) + by;
        return to >= 0 && to < steps.size() ? Optional.of(steps.get(to)) : Optional.empty();
    }

    /** Restores the step at which the learner left the lesson. */
    void wasAt(StepModel step) {
        inSight.set(step);
    }

    /** Resets everything to the author's text. */
    public void reset() {
        chain.stop();
        opening.reset();
        steps.forEach(StepModel::reset);
    }

    /** Runs an action whenever the work to save has changed. */
    public void whenChanged(Runnable action) {
        opening.whenChanged(action);
        steps.forEach(step -> step.whenChanged(action));
        inSight.addListener((value, was, is) -> action.run());
        lastUsed.addListener((value, was, is) -> action.run());
    }

    public void use() {
        lastUsed.set(Instant.now());
    }

    /** Restores when it was last used. */
    void wasUsed(Instant when) {
        if (lastUsed.get() == null) {
            lastUsed.set(when);
        }
    }

    /** When the learner last opened or changed it; empty if never. */
    public Optional<Instant> lastUsed() {
        return Optional.ofNullable(lastUsed.get());
    }

    /** The figures that the learner has pinned. */
    public PinnedFigures pins() {
        return pinnedFigures;
    }

    /** Decides what its snippets may do. */
    public RunGate gate() {
        return gate;
    }

    public int stepsDone() {
        return (int) steps.stream().filter(step -> step.done().get()).count();
    }

    /** The file it was read from; empty for a lesson that came with the program. */
    public Optional<Path> ownFile() {
        Path file = Path.of(lesson.file());
        return LessonKey.ofFile(file).equals(key) ? Optional.of(file) : Optional.empty();
    }

    /** Whether its file is watched; a file in a zip file can't be. */
    public boolean isFollowed() {
        return ownFile().filter(Files::isRegularFile).isPresent();
    }

    /** Whether its author is writing it: its snippets run however its file changes. */
    public ReadOnlyBooleanProperty written() {
        return written;
    }

    public void setWritten(boolean is) {
        written.set(is);
    }

    /** The errors in the text of a step, in the order of their lines. */
    public List<LessonFault> faultsOf(StepModel step) {
        List<LessonStep> all = lesson.steps();
        int at = step.number();
        int from = at < 1 ? 0 : all.get(at - 1).line();
        int to = at < all.size() ? all.get(at).line() : Integer.MAX_VALUE;
        return lesson.faults().stream()
                .filter(fault -> fault.line() >= Math.max(1, from) && fault.line() < to)
                .toList();
    }

    /**
     * All errors that an author has to fix, in the order of their lines: those in the text and, in
     * a lesson from a file, those of the last runs of snippets that the reader hasn't changed.
     */
    public List<LessonFault> faults() {
        Stream<SnippetModel> own = ownFile().isPresent() ? snippets.stream() : Stream.of();
        Stream<LessonFault> run =
                own.filter(one -> !one.edited().get())
                        .flatMap(
                                one ->
                                        one.result().problems().stream()
                                                .limit(1)
                                                .map(problem -> fault(one, problem)));
        return Stream.concat(lesson.faults().stream(), run)
                .sorted(Comparator.comparingInt(LessonFault::line))
                .toList();
    }

    private LessonFault fault(SnippetModel one, SnippetProblem problem) {
        int line = one.snippet().line() + Math.max(0, problem.line());
        return new LessonFault(lesson.file(), line, problem.words());
    }

    /** All snippets of the lesson from the top, with the given ones. */
    public List<SnippetModel> snippets() {
        return snippets;
    }

    public LessonKey key() {
        return key;
    }

    public Lesson lesson() {
        return lesson;
    }

    /** The text before the first step, as a step without number. */
    public StepModel opening() {
        return opening;
    }

    public List<StepModel> steps() {
        return steps;
    }

    /** The step that the learner looks at. */
    public ReadOnlyObjectProperty<StepModel> inSight() {
        return inSight.getReadOnlyProperty();
    }
}
