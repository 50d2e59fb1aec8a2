package coldwright.desk.batch.model;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchLineage;
import coldwright.batch.BatchPreview;
import coldwright.batch.BatchReport;
import coldwright.batch.Recipe;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.Executor;

/**
 * One batch: its recipe with undo, and its figures, calculated again after each change off the
 * window's thread. While a line is wrong, the earlier figures stay.
 */
public final class BatchModel {
    private static final int MOST_UNDONE = 500;
    private static final String UNNAMED = "batch";

    /** A recipe for undo or redo, and the change that was applied; empty if it was typed. */
    private record RecipeRevision(Recipe recipe, String words) {}

    private final Executor window;
    private final LatestTaskRunner glancing;
    private final LatestTaskRunner analysisTask;
    private final ReadOnlyObjectWrapper<Recipe> recipe;
    private final ReadOnlyObjectWrapper<BatchLineage> lineage;
    private final ReadOnlyObjectWrapper<Optional<BatchPreview>> preview =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<BatchAnalysis>> figures =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper stale = new ReadOnlyBooleanWrapper(true);
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private final Deque<RecipeRevision> before = new ArrayDeque<>();
    private final Deque<RecipeRevision> after = new ArrayDeque<>();
    private String lastPlace = "";
    private int asked;

    /**
     * Makes a batch and calculates it.
     *
     * @param batchLineage its number and parent
     * @param work threads to calculate on
     */
    public BatchModel(Recipe recipe, BatchLineage batchLineage, Executor work, Executor window) {
        this.window = window;
        this.glancing = new LatestTaskRunner(work);
        this.analysisTask = new LatestTaskRunner(work);
        this.recipe = new ReadOnlyObjectWrapper<>(recipe);
        this.lineage = new ReadOnlyObjectWrapper<>(batchLineage);
        analyse();
    }

    /**
     * Changes the recipe. Successive changes of one place are undone together.
     *
     * @param place the changed field; empty for a change of its own
     */
    public void change(String place, Recipe is) {
        change(place, is, "");
    }

    /**
     * Applies a fix or a change for a goal; the history names it until it is undone.
     *
     * @param words the change, in plain words
     */
    public void take(Recipe is, String words) {
        if (!is.equals(recipe.get())) {
            change("", is, words);
            lineage.set(lineage.get().withChange(words));
        }
    }

    /**
     * The recipe that a change of a place starts from, so that scaling at each key doesn't
     * accumulate rounding.
     *
     * @param place the changed field
     * @return the recipe before the successive changes of this place
     */
    public Recipe from(String place) {
        return goesOn(place) ? before.peek().recipe() : recipe.get();
    }

    /** Whether a change of a place continues the last one. */
    private boolean goesOn(String place) {
        return !place.isEmpty() && place.equals(lastPlace);
    }

    private void change(String place, Recipe is, String words) {
        Recipe was = recipe.get();
        if (is.equals(was)) {
            return;
        }
        if (!goesOn(place)) {
            before.push(new RecipeRevision(was, words));
            while (before.size() > MOST_UNDONE) {
                before.removeLast();
            }
        }
        lastPlace = place;
        after.clear();
        recipe.set(is);
        analyse();
    }

    /** Undoes the last change, if there is one. */
    public void undo() {
        String words = turn(before, after);
        if (!words.isEmpty()) {
            lineage.set(lineage.get().putBack());
        }
    }

    /** Redoes a change that was undone, if there is one. */
    public void redo() {
        String words = turn(after, before);
        if (!words.isEmpty()) {
            lineage.set(lineage.get().withChange(words));
        }
    }

    private String turn(Deque<RecipeRevision> from, Deque<RecipeRevision> to) {
        if (from.isEmpty()) {
            return "";
        }
        RecipeRevision step = from.pop();
        to.push(new RecipeRevision(recipe.get(), step.words()));
        lastPlace = "";
        recipe.set(step.recipe());
        analyse();
        return step.words();
    }

    /** Sets its number, parent and history. */
    void publish(BatchLineage is) {
        lineage.set(is);
    }

    private void analyse() {
        int mine = ++asked;
        Recipe batch = named();
        stale.set(!figuresAreOfNow());
        if (batch.lines().stream().anyMatch(line -> line.fault().isPresent())) {
            trouble.set("");
            return;
        }
        glancing.take(
                () -> {
                    try {
                        BatchPreview seen = BatchPreview.of(batch);
                        window.execute(() -> changeApplied(mine, seen));
                        analysisTask.take(() -> analyseAll(mine, seen));
                    } catch (IllegalArgumentException e) {
                        window.execute(() -> failed(mine, e.getMessage()));
                    }
                });
    }

    private Recipe named() {
        Recipe now = recipe.get();
        return now.name().isBlank() ? now.called(UNNAMED) : now;
    }

    private void analyseAll(int mine, BatchPreview seen) {
        try {
            BatchAnalysis all = BatchAnalysis.of(seen);
            window.execute(() -> changeApplied(mine, all));
        } catch (IllegalArgumentException e) {
            window.execute(() -> failed(mine, e.getMessage()));
        }
    }

    private void changeApplied(int mine, BatchPreview seen) {
        if (mine == asked) {
            trouble.set("");
            preview.set(Optional.of(seen));
        }
    }

    /** Publishes the analysis of the current preview, even if the latest text can't be read. */
    private void changeApplied(int mine, BatchAnalysis all) {
        boolean seen = preview.get().filter(one -> one.equals(all.preview())).isPresent();
        if (mine == asked || seen) {
            figures.set(Optional.of(all));
            stale.set(!figuresAreOfNow());
        }
    }

    private void failed(int mine, String words) {
        if (mine == asked) {
            trouble.set(words);
            stale.set(true);
        }
    }

    /**
     * Whether the figures are those of the current recipe.
     *
     * @return false while a line is wrong or the calculation is running
     */
    public boolean figuresAreOfNow() {
        return trouble.get().isEmpty()
                && figures.get()
                        .filter(all -> all.batch().equals(named()))
                        .filter(all -> preview.get().filter(all.preview()::equals).isPresent())
                        .isPresent();
    }

    /** The opposite of {@link #figuresAreOfNow}, as a property. */
    public ReadOnlyBooleanProperty stale() {
        return stale.getReadOnlyProperty();
    }

    /** The recipe that the results shown are of. */
    public Recipe shownRecipe() {
        return preview.get().map(BatchPreview::batch).orElseGet(recipe::get);
    }

    /** The current recipe; changed by {@link #change}. */
    public ReadOnlyObjectProperty<Recipe> recipe() {
        return recipe.getReadOnlyProperty();
    }

    /** Its number, parent and history. */
    public ReadOnlyObjectProperty<BatchLineage> lineage() {
        return lineage.getReadOnlyProperty();
    }

    /** The figures that are available at once; empty before the first. */
    public ReadOnlyObjectProperty<Optional<BatchPreview>> preview() {
        return preview.getReadOnlyProperty();
    }

    /** All figures, available a moment later; empty before the first. */
    public ReadOnlyObjectProperty<Optional<BatchAnalysis>> figures() {
        return figures.getReadOnlyProperty();
    }

    /** Its results: all of them if they are those of the preview, otherwise the preview's. */
    public Optional<BatchReport> report() {
        Optional<BatchReport> quick = preview.get().map(BatchPreview::report);
        return figures.get()
                .filter(all -> preview.get().filter(all.preview()::equals).isPresent())
                .map(BatchAnalysis::report)
                .or(() -> quick);
    }

    /** Why it can't be calculated, in a sentence; empty if it can. */
    public ReadOnlyStringProperty trouble() {
        return trouble.getReadOnlyProperty();
    }
}
