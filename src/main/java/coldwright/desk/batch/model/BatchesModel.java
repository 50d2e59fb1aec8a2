package coldwright.desk.batch.model;

import coldwright.batch.BatchLineage;
import coldwright.batch.Recipe;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** A cook's batches, one of them open, and perhaps another to compare it with. */
public final class BatchesModel {
    private static final System.Logger LOG = System.getLogger("coldwright.desk");

    private final Executor work;
    private final Executor window;
    private final ObservableList<BatchModel> batches = FXCollections.observableArrayList();
    private final ObservableList<BatchModel> shown =
            FXCollections.unmodifiableObservableList(batches);
    private final ReadOnlyObjectWrapper<BatchModel> open = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Optional<ArchivedBatch>> archived =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<BatchStore>> store =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObjectProperty<Optional<BatchModel>> against =
            new SimpleObjectProperty<>(Optional.empty());

    /**
     * A model without batches.
     *
     * @param work threads to calculate on
     */
    public BatchesModel(Executor work, Executor window) {
        this.work = work;
        this.window = window;
    }

    /**
     * Adds a batch and opens it.
     *
     * @param batchLineage its number and parent; a number in use is replaced
     */
    public BatchModel add(Recipe recipe, BatchLineage batchLineage) {
        boolean taken =
                batchLineage.number() < 1
                        || batches.stream()
                                .anyMatch(
                                        one ->
                                                one.lineage().get().number()
                                                        == batchLineage.number());
        BatchModel batch =
                new BatchModel(
                        recipe,
                        taken ? batchLineage.numbered(free(), 0) : batchLineage,
                        work,
                        window);
        batches.add(batch);
        open(batch);
        return batch;
    }

    /**
     * Gives a batch another number, because another window has a batch with its number.
     *
     * @param is an unused number
     * @param follows which of the batches with that parent number have this batch as parent
     */
    void renumber(BatchModel batch, int is, Predicate<BatchModel> follows) {
        BatchLineage batchLineage = batch.lineage().get();
        List<BatchModel> after =
                batches.stream()
                        .filter(one -> one.lineage().get().after() == batchLineage.number())
                        .filter(follows)
                        .toList();
        batch.publish(batchLineage.numbered(is, batchLineage.after()));
        after.forEach(
                one -> one.publish(one.lineage().get().numbered(one.lineage().get().number(), is)));
    }

    /** A number that none of its batches has, the archived one included. */
    int free() {
        return 1
                + Stream.concat(batches.stream(), archived.get().map(ArchivedBatch::batch).stream())
                        .mapToInt(one -> one.lineage().get().number())
                        .max()
                        .orElse(0);
    }

    /** Adds a batch to begin with. */
    public BatchModel startBatch(String name) {
        return add(Recipe.starter(name), BatchLineage.first(free()));
    }

    /**
     * Makes the next batch from one, and compares the two.
     *
     * @param recipe the next one's recipe
     * @param why the goal or the fix
     * @return the next batch
     */
    public BatchModel next(BatchModel from, Recipe recipe, String why) {
        BatchLineage batchLineage =
                new BatchLineage(free(), from.lineage().get().number(), List.of(), why);
        BatchModel next = add(recipe, batchLineage);
        against.set(Optional.of(from));
        return next;
    }

    /** Opens a batch and compares it with its parent. */
    public void open(BatchModel batch) {
        against.set(before(batch));
        open.set(batch);
    }

    /**
     * Archives a batch; the last one stays. It can be restored until another is archived or the
     * window is closed.
     */
    public void close(BatchModel batch) {
        int place = batches.indexOf(batch);
        if (batches.size() > 1 && batches.remove(batch)) {
            archived.set(Optional.of(new ArchivedBatch(batch, place)));
            if (against.get().filter(one -> one == batch).isPresent()) {
                against.set(Optional.empty());
            }
            if (open.get() == batch) {
                open(batches.get(batches.size() - 1));
            }
        }
    }

    /** Restores the batch that was archived last, if there is one. */
    public void restore() {
        Optional<ArchivedBatch> last = archived.get();
        archived.set(Optional.empty());
        last.ifPresent(one -> batches.add(Math.min(one.place, batches.size()), one.batch));
    }

    /** The batch that was archived last; empty before the first, and once it is restored. */
    public ReadOnlyObjectProperty<Optional<ArchivedBatch>> archived() {
        return archived.getReadOnlyProperty();
    }

    /**
     * An archived batch.
     *
     * @param batch the batch
     * @param place its index among the others
     */
    public record ArchivedBatch(BatchModel batch, int place) {}

    /** The parent of a batch; empty if it has none, or if it isn't here. */
    public Optional<BatchModel> before(BatchModel batch) {
        int after = batch.lineage().get().after();
        return batches.stream()
                .filter(one -> one != batch && one.lineage().get().number() == after)
                .findFirst();
    }

    /**
     * Records the faults found in tasting a batch.
     *
     * @param found the faults, in plain words
     */
    public void tasted(BatchModel batch, List<String> found) {
        batch.publish(batch.lineage().get().tasted(found));
    }

    /** All batches in the order in which they were made; not to be changed. */
    public ObservableList<BatchModel> batches() {
        return shown;
    }

    /** The open batch; null before the first. */
    public ReadOnlyObjectProperty<BatchModel> open() {
        return open.getReadOnlyProperty();
    }

    /** The batch compared with the open one; empty for none; may be set. */
    public ObjectProperty<Optional<BatchModel>> against() {
        return against;
    }

    /**
     * Saves the batches from now on, and offers their files.
     *
     * @param is the store
     * @return completes when the stored batches are restored
     */
    public CompletableFuture<Void> keepOn(BatchStore is) {
        store.set(Optional.of(is));
        return is.keep(this);
    }

    /** Where the batches are stored; empty if nowhere. */
    public ReadOnlyObjectProperty<Optional<BatchStore>> store() {
        return store.getReadOnlyProperty();
    }

    /**
     * Runs a slow calculation off the window's thread.
     *
     * @param <T> type of the answer
     * @param question gives the answer
     * @param then receives it, on the window's thread
     */
    public <T> void ask(Supplier<T> question, Consumer<T> then) {
        CompletableFuture.supplyAsync(question, work)
                .thenAcceptAsync(then, window)
                .exceptionally(
                        trouble -> {
                            LOG.log(System.Logger.Level.ERROR, "a question broke", trouble);
                            return null;
                        });
    }
}
