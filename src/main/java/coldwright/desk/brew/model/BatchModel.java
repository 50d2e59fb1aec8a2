package coldwright.desk.brew.model;

import coldwright.batch.BatchFault;
import coldwright.batch.BatchFile;
import coldwright.batch.BatchReader;
import coldwright.batch.Reckoning;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.Executor;

/**
 * One batch: its recipe with what was undone, and its figures, reckoned anew after each change off
 * the window's thread. While a line is wrong the figures before it stay.
 */
public final class BatchModel {
    private static final int MOST_UNDONE = 500;
    private static final String FILE = "batch";

    /** A recipe to go back or on to, and what was taken between; empty if it was typed. */
    private record Step(Recipe recipe, String words) {}

    private final Executor window;
    private final Newest glancing;
    private final Newest reckoning;
    private final ReadOnlyObjectWrapper<Recipe> recipe;
    private final ReadOnlyObjectWrapper<Story> story;
    private final ReadOnlyObjectWrapper<Optional<Glance>> glance =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Reckoning>> figures =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private final Deque<Step> before = new ArrayDeque<>();
    private final Deque<Step> after = new ArrayDeque<>();
    private String lastPlace = "";
    private int asked;

    /**
     * Makes a batch and reckons it.
     *
     * @param recipe its recipe
     * @param story where it stands in its row
     * @param work threads to reckon on
     * @param window the window's thread
     */
    public BatchModel(Recipe recipe, Story story, Executor work, Executor window) {
        this.window = window;
        this.glancing = new Newest(work);
        this.reckoning = new Newest(work);
        this.recipe = new ReadOnlyObjectWrapper<>(recipe);
        this.story = new ReadOnlyObjectWrapper<>(story);
        reckon();
    }

    /**
     * Changes the recipe. Changes of one place that follow each other are undone together.
     *
     * @param place what is changed, such as a field; empty for a deed of its own
     * @param is the recipe from now on
     */
    public void change(String place, Recipe is) {
        change(place, is, "");
    }

    /**
     * Takes a mend or what grants a wish; the story names it until it is undone.
     *
     * @param is the recipe from now on
     * @param words what was taken, in plain words
     */
    public void take(Recipe is, String words) {
        if (!is.equals(recipe.get())) {
            change("", is, words);
            story.set(story.get().took(words));
        }
    }

    /**
     * What a change of a place starts from, so that scaling with each key does not round upon
     * rounding.
     *
     * @param place what is changed
     * @return the recipe from before the changes of this place that follow each other
     */
    public Recipe from(String place) {
        return goesOn(place) ? before.peek().recipe() : recipe.get();
    }

    /** Whether a change of a place belongs to the last one. */
    private boolean goesOn(String place) {
        return !place.isEmpty() && place.equals(lastPlace);
    }

    private void change(String place, Recipe is, String words) {
        Recipe was = recipe.get();
        if (is.equals(was)) {
            return;
        }
        if (!goesOn(place)) {
            before.push(new Step(was, words));
            while (before.size() > MOST_UNDONE) {
                before.removeLast();
            }
        }
        lastPlace = place;
        after.clear();
        recipe.set(is);
        reckon();
    }

    /** Takes the last change back; nothing if there is none. */
    public void undo() {
        String words = turn(before, after);
        if (!words.isEmpty()) {
            story.set(story.get().putBack());
        }
    }

    /** Makes a change again that was taken back; nothing if there is none. */
    public void redo() {
        String words = turn(after, before);
        if (!words.isEmpty()) {
            story.set(story.get().took(words));
        }
    }

    private String turn(Deque<Step> from, Deque<Step> to) {
        if (from.isEmpty()) {
            return "";
        }
        Step step = from.pop();
        to.push(new Step(recipe.get(), step.words()));
        lastPlace = "";
        recipe.set(step.recipe());
        reckon();
        return step.words();
    }

    /**
     * Whether a change can be taken back.
     *
     * @return true after the first change
     */
    public boolean canUndo() {
        return !before.isEmpty();
    }

    /**
     * Whether a change can be made again.
     *
     * @return true after an undo
     */
    public boolean canRedo() {
        return !after.isEmpty();
    }

    /** Tells where it stands, and what was found in it. */
    void tell(Story is) {
        story.set(is);
    }

    private void reckon() {
        int mine = ++asked;
        Recipe now = recipe.get();
        var own = now.ownByName();
        if (now.lines().stream().anyMatch(line -> line.fault(own).isPresent())) {
            trouble.set("");
            return;
        }
        String text = RecipeText.of(now);
        glancing.take(
                () -> {
                    try {
                        BatchFile batch = BatchReader.read(FILE, text);
                        Glance seen = Glance.of(batch);
                        window.execute(() -> took(mine, seen));
                        reckoning.take(() -> reckonAll(mine, batch));
                    } catch (BatchFault e) {
                        window.execute(() -> failed(mine, e.getMessage()));
                    }
                });
    }

    private void reckonAll(int mine, BatchFile batch) {
        try {
            Reckoning all = Reckoning.of(batch);
            window.execute(() -> took(mine, all));
        } catch (BatchFault e) {
            window.execute(() -> failed(mine, e.getMessage()));
        }
    }

    private void took(int mine, Glance seen) {
        if (mine == asked) {
            trouble.set("");
            glance.set(Optional.of(seen));
        }
    }

    /** What is seen at a glance gets all its figures, also if what was typed next can't be read. */
    private void took(int mine, Reckoning all) {
        boolean seen = glance.get().filter(one -> one.batch().equals(all.batch())).isPresent();
        if (mine == asked || seen) {
            figures.set(Optional.of(all));
        }
    }

    private void failed(int mine, String words) {
        if (mine == asked) {
            trouble.set(words.replaceFirst("^" + FILE + ":([0-9]+:)? ", ""));
        }
    }

    /**
     * Whether the figures are those of the recipe as it stands.
     *
     * @return false while a line is wrong or the reckoning is on its way
     */
    public boolean figuresAreOfNow() {
        return trouble.get().isEmpty()
                && figures.get().isPresent()
                && glance.get().isPresent()
                && figures.get().get().batch().equals(glance.get().get().batch());
    }

    /**
     * The recipe as it stands.
     *
     * @return changed by {@link #change}
     */
    public ReadOnlyObjectProperty<Recipe> recipe() {
        return recipe.getReadOnlyProperty();
    }

    /**
     * Where it stands in its row.
     *
     * @return the story
     */
    public ReadOnlyObjectProperty<Story> story() {
        return story.getReadOnlyProperty();
    }

    /**
     * The figures that come at once.
     *
     * @return empty before the first
     */
    public ReadOnlyObjectProperty<Optional<Glance>> glance() {
        return glance.getReadOnlyProperty();
    }

    /**
     * All figures, a moment later.
     *
     * @return empty before the first
     */
    public ReadOnlyObjectProperty<Optional<Reckoning>> figures() {
        return figures.getReadOnlyProperty();
    }

    /**
     * Why it can't be reckoned.
     *
     * @return a sentence; empty if it can
     */
    public ReadOnlyStringProperty trouble() {
        return trouble.getReadOnlyProperty();
    }
}
