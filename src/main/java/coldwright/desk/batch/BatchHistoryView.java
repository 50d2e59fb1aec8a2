package coldwright.desk.batch;

import coldwright.batch.BatchLineage;
import coldwright.desk.batch.model.BatchDifferences;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.batch.search.TastingDiagnosis;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.science.diagnosis.Symptom;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The history of the batches: what each was made from, its changes, and its tasting. */
final class BatchHistoryView extends VBox {
    private final BatchesModel batches;
    private final Button back;
    private final VBox rows = new VBox();
    private final Subscription followed;
    private Subscription ofEach = Subscription.EMPTY;

    BatchHistoryView(BatchesModel brew) {
        this.batches = brew;
        getStyleClass().add("brew-part");
        rows.getStyleClass().add("brew-part");
        back = quiet("", brew::restore);
        TextControls.show(back, false);
        getChildren().addAll(InputFields.heading("batch.history"), rows, back);
        followed =
                Subscription.combine(
                        brew.archived().subscribe((was, is) -> offer(is)),
                        brew.batches().subscribe(this::refresh),
                        brew.open().subscribe(this::refresh),
                        brew.against().subscribe(this::refresh));
        refresh();
    }

    private void offer(Optional<BatchesModel.ArchivedBatch> last) {
        last.ifPresent(
                one ->
                        back.setText(
                                Messages.of(
                                        "batch.history.back",
                                        String.valueOf(one.batch().lineage().get().number()),
                                        one.batch().recipe().get().name())));
        TextControls.show(back, last.isPresent());
    }

    /** Stops following the batches. */
    void close() {
        followed.unsubscribe();
        ofEach.unsubscribe();
    }

    void refresh() {
        ofEach.unsubscribe();
        ofEach = Subscription.EMPTY;
        for (BatchModel batch : batches.batches()) {
            ofEach = ofEach.and(batch.lineage().subscribe(this::refresh));
            ofEach = ofEach.and(batch.recipe().subscribe(this::refresh));
        }
        Optional<HistoryNode> focused = focused();
        rows.getChildren().setAll(batches.batches().stream().map(this::row).toList());
        focused.ifPresent(this::focus);
    }

    /** Which button of which row has the focus, to restore it when the rows are rebuilt. */
    private Optional<HistoryNode> focused() {
        for (int row = 0; row < rows.getChildren().size(); row++) {
            List<Node> words = words(row);
            for (int word = 0; word < words.size(); word++) {
                if (words.get(word).isFocused()) {
                    return Optional.of(new HistoryNode(row, word));
                }
            }
        }
        return Optional.empty();
    }

    private void focus(HistoryNode place) {
        if (place.row < rows.getChildren().size()) {
            List<Node> words = words(place.row);
            words.get(Math.min(place.word, words.size() - 1)).requestFocus();
        }
    }

    private List<Node> words(int row) {
        return ((FlowPane) ((VBox) rows.getChildren().get(row)).getChildren().get(0)).getChildren();
    }

    /** Whether one of its buttons has the focus. */
    boolean hasKeyboard() {
        return focused().isPresent();
    }

    private record HistoryNode(int row, int word) {}

    private Node row(BatchModel batch) {
        BatchLineage batchLineage = batch.lineage().get();
        boolean here = batch.equals(batches.open().get());
        Button open =
                TextControls.button(
                        Messages.of(
                                "batch.history.batch",
                                String.valueOf(batchLineage.number()),
                                batch.recipe().get().name()),
                        () -> batches.open(batch));
        FlowPane words = InputFields.choices(open);
        VBox row = new VBox(words);
        row.getStyleClass().add("brew-batch");
        if (here) {
            row.getStyleClass().add("here");
            open.setAccessibleText(open.getText() + ", " + Messages.of("batch.history.open"));
        } else {
            boolean held = batches.against().get().filter(batch::equals).isPresent();
            String hold = Messages.of(held ? "batch.history.let-go" : "batch.history.hold");
            Optional<BatchModel> then = held ? Optional.empty() : Optional.of(batch);
            words.getChildren()
                    .addAll(
                            quiet(hold, () -> batches.against().set(then)),
                            quiet(Messages.of("batch.history.away"), () -> batches.close(batch)));
        }
        batches.before(batch).ifPresent(from -> row.getChildren().add(made(from, batch)));
        if (!batchLineage.taken().isEmpty()) {
            String taken = String.join(" ", batchLineage.taken());
            InputFields.say(row, Messages.of("batch.history.taken", taken), "brew-why");
        }
        if (!batchLineage.found().isEmpty()) {
            InputFields.say(
                    row, Messages.of("batch.history.found", found(batchLineage)), "brew-why");
        }
        return row;
    }

    private static Button quiet(String word, Runnable action) {
        Button button = TextControls.button(word, action);
        button.getStyleClass().add("quiet-word");
        return button;
    }

    private static Node made(BatchModel from, BatchModel batch) {
        List<String> changed = BatchDifferences.between(from.recipe().get(), batch.recipe().get());
        String what =
                changed.isEmpty() ? Messages.of("batch.history.same") : String.join("; ", changed);
        String number = String.valueOf(from.lineage().get().number());
        String why = batch.lineage().get().why();
        return TextControls.label(
                why.isEmpty()
                        ? Messages.of("batch.history.made", number, what)
                        : Messages.of("batch.history.made-for", number, why, what),
                "brew-why");
    }

    private static String found(BatchLineage batchLineage) {
        return batchLineage.found().stream()
                .map(
                        one -> {
                            try {
                                return TastingDiagnosis.words(Symptom.named(one));
                            } catch (IllegalArgumentException e) {
                                return one;
                            }
                        })
                .collect(Collectors.joining(", "));
    }
}
