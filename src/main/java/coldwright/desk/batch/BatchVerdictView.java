package coldwright.desk.batch;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchReport;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchSentences;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.messages.Typography;
import coldwright.science.plan.Finding;

import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.util.Subscription;

import java.util.ArrayList;
import java.util.List;

/** The verdict on the open batch in a line below the page, in view whatever is typed. */
final class BatchVerdictView extends HBox {
    private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

    private final Label verdict = TextControls.label("", "brew-verdict-words");
    private Subscription followed = Subscription.EMPTY;
    private BatchModel batch;

    BatchVerdictView() {
        getStyleClass().add("brew-verdict");
        setHgrow(verdict, Priority.ALWAYS);
        verdict.setMaxWidth(Double.MAX_VALUE);
        getChildren().add(verdict);
    }

    /** Shows another batch. */
    void show(BatchModel is) {
        followed.unsubscribe();
        batch = is;
        followed =
                Subscription.combine(
                        batch.preview().subscribe(this::refresh),
                        batch.figures().subscribe(this::refresh),
                        batch.stale().subscribe(this::refresh));
        refresh();
    }

    /** Stops following the batch. */
    void close() {
        followed.unsubscribe();
    }

    private void refresh() {
        List<String> words = new ArrayList<>();
        batch.report().ifPresent(report -> words.add(BatchSentences.freezingCaption(report)));
        batch.analysis().ifPresent(all -> words.addAll(words(all)));
        verdict.setText(Typography.of(String.join(" · ", words)));
        pseudoClassStateChanged(STALE, batch.stale().get());
        TextControls.show(this, !words.isEmpty());
    }

    private static List<String> words(BatchAnalysis all) {
        List<Finding> findings = all.report().findings();
        String found =
                findings.isEmpty()
                        ? BatchReport.NO_FINDINGS.shown()
                        : BatchSentences.finding(findings.get(0)).get(0);
        return List.of(
                BatchSentences.clockCaption(all),
                BatchSentences.crystalsCaption(all.report()),
                findings.size() > 1
                        ? Messages.of("batch.verdict.more", found, findings.size() - 1)
                        : found);
    }
}
