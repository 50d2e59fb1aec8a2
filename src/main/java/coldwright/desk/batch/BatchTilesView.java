package coldwright.desk.batch;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchPreview;
import coldwright.desk.batch.model.BatchFigures;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchSentences;
import coldwright.desk.batch.model.BatchShare;
import coldwright.desk.batch.model.FreezeSchedule;
import coldwright.desk.messages.Messages;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;

import java.time.LocalTime;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Four tiles: composition, freezing curve, freezing time and crystal size of a batch. */
final class BatchTilesView extends GridPane {
    /** From this width on, in ems, all four tiles are in one row. */
    private static final double ROW_EM = 29;

    private static final double HEIGHT_EM = 5;
    private static final double WIDTH_EM = 6;
    private static final int PARTS = 3;
    private static final double BAR_EM = 0.35;
    private static final int POINTS = 40;

    private final ObservableValue<? extends Number> emPx;
    private final FigureTile inside;
    private final FigureTile freezing;
    private final FigureTile clock;
    private final FigureTile crystals;
    private BatchPreview preview;
    private BatchAnalysis all;
    private Optional<BatchModel> against = Optional.empty();

    /**
     * Makes tiles.
     *
     * @param largeFigureLink leads to the large figures
     */
    BatchTilesView(ObservableValue<? extends Number> emPx, LargeFigureLink largeFigureLink) {
        this.emPx = emPx;
        inside = new FigureTile(Messages.of("batch.plate.inside"), largeFigureLink.inside);
        freezing = new FigureTile(Messages.of("batch.plate.freezing"), largeFigureLink.freezing);
        clock = new FigureTile(Messages.of("batch.plate.clock"), largeFigureLink.clock);
        crystals =
                new FigureTile(Messages.of("batch.tile.crystals.short"), largeFigureLink.crystals);
        getStyleClass().add("brew-tiles");
        // or four tiles in a row would keep the room that they need after it has become narrower
        setMinWidth(0);
        getChildren().addAll(inside, freezing, clock, crystals);
        widthProperty().addListener(value -> arrange());
        emPx.addListener(
                (value, was, is) -> {
                    arrange();
                    if (preview != null) {
                        show(preview, against);
                    }
                    if (all != null) {
                        show(all, against);
                    }
                });
        arrange();
    }

    private void arrange() {
        int columns = getWidth() >= ROW_EM * em() ? 4 : 2;
        if (getColumnCount() == columns && !getColumnConstraints().isEmpty()) {
            return;
        }
        ColumnConstraints even = new ColumnConstraints();
        even.setPercentWidth(100.0 / columns);
        even.setMinWidth(0);
        getColumnConstraints().setAll(Collections.nCopies(columns, even));
        List<Node> tiles = List.copyOf(getChildren());
        for (int i = 0; i < tiles.size(); i++) {
            setConstraints(tiles.get(i), i % columns, i / columns);
        }
    }

    /** Shows a preview, beside that of another batch. */
    void show(BatchPreview now, Optional<BatchModel> beside) {
        preview = now;
        against = beside;
        Optional<BatchPreview> other = beside.flatMap(one -> one.preview().get());
        List<BatchShare> parts = BatchShare.of(now.mix());
        List<BatchShare> others = other.map(one -> BatchShare.of(one.mix())).orElse(List.of());
        inside.show(parts(parts, others), "", told(parts) + besides(told(others)));
        freezing.show(
                curve(now, other),
                BatchSentences.freezingCaption(now.report())
                        + besides(other, one -> BatchSentences.freezingCaption(one.report())));
    }

    /** Shows an analysis, beside that of another batch. */
    void show(BatchAnalysis now, Optional<BatchModel> beside) {
        all = now;
        against = beside;
        Optional<BatchAnalysis> other = beside.flatMap(one -> one.figures().get());
        FreezeClockFace face = FreezeClockFace.small(HEIGHT_EM);
        face.show(FreezeSchedule.of(now, LocalTime.NOON), em());
        other.ifPresent(one -> face.beside(FreezeSchedule.of(one, LocalTime.NOON)));
        clock.show(
                face,
                BatchSentences.clockCaption(now) + besides(other, BatchSentences::clockCaption));
        crystals.show(
                crystal(now, other),
                BatchSentences.crystalsCaption(now.report())
                        + besides(other, one -> BatchSentences.crystalsCaption(one.report())));
    }

    private static String told(List<BatchShare> parts) {
        return parts.stream().map(BatchSentences::caption).collect(Collectors.joining(", "));
    }

    private <T> String besides(Optional<T> other, Function<T, String> caption) {
        return besides(other.map(caption).orElse(""));
    }

    /** What the other batch has, on a line of its own. */
    private String besides(String caption) {
        return caption.isEmpty()
                ? ""
                : "\n"
                        + Messages.of(
                                "batch.tile.other",
                                against.orElseThrow().lineage().get().number(),
                                caption);
    }

    private Node parts(List<BatchShare> parts, List<BatchShare> others) {
        VBox bars = new VBox();
        bars.getStyleClass().add("brew-tile-parts");
        parts.stream()
                .filter(part -> !part.key().equals("rest"))
                .sorted(Comparator.comparingDouble(BatchShare::percent).reversed())
                .limit(PARTS)
                .forEach(
                        part -> {
                            double width = Math.max(1, part.percent() / 100 * WIDTH_EM * em());
                            Label word = new Label(BatchSentences.caption(part));
                            word.getStyleClass().add("brew-tile-words");
                            Shape bar = new Rectangle(width, BAR_EM * em());
                            bars.getChildren().addAll(word, SmallShapes.as(bar, "small-ice"));
                            others.stream()
                                    .filter(one -> one.key().equals(part.key()))
                                    .forEach(one -> bars.getChildren().add(otherBar(one)));
                        });
        return bars;
    }

    private Node otherBar(BatchShare part) {
        double width = Math.max(1, part.percent() / 100 * WIDTH_EM * em());
        return SmallShapes.as(new Rectangle(width, BAR_EM * em()), "small-other");
    }

    private Node curve(BatchPreview now, Optional<BatchPreview> other) {
        double width = WIDTH_EM * em();
        double height = HEIGHT_EM * em();
        Pane pane = sized(width, height);
        Polyline line = line(now, width, height);
        other.ifPresent(
                one ->
                        pane.getChildren()
                                .add(SmallShapes.as(line(one, width, height), "small-other")));
        double freezerC = now.batch().freezerC();
        double servingC = now.servingC();
        pane.getChildren().add(SmallShapes.as(new Line(0, height, width, height), "clock-tick"));
        for (double temperatureC : new double[] {freezerC, servingC}) {
            if (temperatureC >= BatchFigures.COLDEST_C) {
                double x = x(temperatureC, width);
                pane.getChildren().add(SmallShapes.as(new Line(x, 0, x, height), "small-mark"));
            }
        }
        Circle served = new Circle(x(servingC, width), y(now, servingC, height), 0.25 * em());
        pane.getChildren()
                .addAll(SmallShapes.as(line, "small-curve"), SmallShapes.as(served, "small-ice"));
        return pane;
    }

    private static Polyline line(BatchPreview of, double width, double height) {
        Polyline line = new Polyline();
        for (int i = 0; i <= POINTS; i++) {
            double temperatureC = BatchFigures.COLDEST_C * i / POINTS;
            line.getPoints().addAll(x(temperatureC, width), y(of, temperatureC, height));
        }
        return line;
    }

    private static double x(double temperatureC, double width) {
        return width * (1 - temperatureC / BatchFigures.COLDEST_C);
    }

    private static double y(BatchPreview now, double temperatureC, double height) {
        return height * (1 - now.curve().icePercentAt(temperatureC) / 100);
    }

    private Node crystal(BatchAnalysis is, Optional<BatchAnalysis> other) {
        Pane pane = sized(2 * SmallShapes.MOST_EM * em(), HEIGHT_EM * em());
        double x = SmallShapes.MOST_EM * em();
        double y = HEIGHT_EM * em() / 2;
        is.crystals()
                .map(one -> one.tasted().meanUm().middle())
                .ifPresent(um -> pane.getChildren().addAll(SmallShapes.crystal(x, y, um, em())));
        other.flatMap(BatchAnalysis::crystals)
                .map(one -> one.tasted().meanUm().middle())
                .map(um -> new Circle(x, y, SmallShapes.radius(um, em())))
                .ifPresent(ring -> pane.getChildren().add(SmallShapes.as(ring, "small-other")));
        return pane;
    }

    private static Pane sized(double width, double height) {
        Pane pane = new Pane();
        pane.setMinSize(width, height);
        pane.setPrefSize(width, height);
        pane.setMaxSize(width, height);
        return pane;
    }

    private double em() {
        return emPx.getValue().doubleValue();
    }

    /**
     * Actions that lead to the large figures.
     *
     * @param inside to the composition
     * @param freezing to the freezing curve
     * @param clock to the clock
     * @param crystals to the crystals
     */
    record LargeFigureLink(Runnable inside, Runnable freezing, Runnable clock, Runnable crystals) {}
}
