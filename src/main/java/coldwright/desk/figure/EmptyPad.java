package coldwright.desk.figure;

import coldwright.desk.lesson.model.PredictionModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Before a step's first run: the question, and the title, axes and units of its first figure. */
final class EmptyPad extends VBox {
    private static final Pattern TITLE = Pattern.compile("Figure\\s*\\.of\\(\"([^\"]+)\"");
    private static final String AXIS = "\\(\"([^\"]+)\"(?:,\\s*\"([^\"]+)\")?";
    private static final Pattern X = Pattern.compile("\\.x" + AXIS);
    private static final Pattern Y = Pattern.compile("\\.y" + AXIS);

    private StepModel step;

    EmptyPad() {
        getStyleClass().add("figure");
        visibleProperty().addListener(visible -> fill());
    }

    void show(StepModel is) {
        step = is;
        fill();
    }

    private void fill() {
        if (!isVisible()) {
            getChildren().clear();
            return;
        }
        String java =
                step.snippets().stream().map(one -> one.text().get()).collect(Collectors.joining());
        Matcher title = TITLE.matcher(java);
        boolean chart = title.find();
        String own = chart ? java.substring(title.start()) : "";
        Label x = words(axis(X, own), "pad-axis");
        x.setMaxWidth(Double.MAX_VALUE);
        x.setAlignment(Pos.CENTER_RIGHT);
        Region axes = TextControls.styled(new Region(), "pad-axes");
        axes.prefHeightProperty().bind(widthProperty().multiply(0.5));
        VBox plate =
                TextControls.styled(
                        new VBox(
                                words(chart ? title.group(1) : "", "pad-title"),
                                words(axis(Y, own), "pad-axis"),
                                axes,
                                x),
                        "pad");
        String question =
                step.predictions().stream()
                        .map(PredictionModel::prediction)
                        .map(one -> one.question())
                        .findFirst()
                        .orElse("");
        getChildren()
                .setAll(
                        plate,
                        words(question, "question"),
                        words(Messages.of("figure.none-yet"), "no-figure"));
        TextControls.show(plate, chart);
    }

    private static Label words(String words, String look) {
        Label label = TextControls.label(words, look);
        TextControls.show(label, !words.isEmpty());
        return label;
    }

    private static String axis(Pattern kind, String java) {
        Matcher axis = kind.matcher(java);
        if (!axis.find()) {
            return "";
        }
        return axis.group(2) == null ? axis.group(1) : axis.group(1) + " (" + axis.group(2) + ")";
    }
}
