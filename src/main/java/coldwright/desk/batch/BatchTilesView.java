package coldwright.desk.batch;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchPreview;
import coldwright.desk.batch.model.BatchFigures;
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
import java.util.stream.Collectors;

/** Four tiles: composition, freezing curve, freezing time and crystal size of a batch. */
final class BatchTilesView extends GridPane {
    /** From this width on, in ems, all four tiles are in one row. */
    private static final double ROW_EM = 27;

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
        getChildren().addAll(inside, freezing, clock, crystals);
        widthProperty().addListener(value -> arrange());
        emPx.addListener(
                (value, was, is) -> {
                    arrange();
                    if (preview != null) {
                        show(preview);
                    }
                    if (all != null) {
                        show(all);
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
        getColumnConstraints().setAll(Collections.nCopies(columns, even));
        List<Node> tiles = List.copyOf(getChildren());
        for (int i = 0; i < tiles.size(); i++) {
            setConstraints(tiles.get(i), i % columns, i / columns);
        }
    }

    void show(BatchPreview now) {
        preview = now;
        List<BatchShare> parts = BatchShare.of(now.mix());
        String told = parts.stream().map(BatchSentences::caption).collect(Collectors.joining(", "));
        inside.show(parts(parts), "", told);
        freezing.show(curve(now), BatchSentences.freezingCaption(now.report()));
    }

    void show(BatchAnalysis now) {
        all = now;
        FreezeClockFace face = FreezeClockFace.small(HEIGHT_EM);
        face.show(FreezeSchedule.of(now, LocalTime.NOON), em());
        clock.show(face, BatchSentences.clockCaption(now));
        crystals.show(crystal(now), BatchSentences.crystalsCaption(now.report()));
    }

    private Node parts(List<BatchShare> parts) {
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
                        });
        return bars;
    }

    private Node curve(BatchPreview now) {
        double width = WIDTH_EM * em();
        double height = HEIGHT_EM * em();
        Pane pane = sized(width, height);
        Polyline line = new Polyline();
        for (int i = 0; i <= POINTS; i++) {
            double temperatureC = BatchFigures.COLDEST_C * i / POINTS;
            line.getPoints().addAll(x(temperatureC, width), y(now, temperatureC, height));
        }
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

    private static double x(double temperatureC, double width) {
        return width * (1 - temperatureC / BatchFigures.COLDEST_C);
    }

    private static double y(BatchPreview now, double temperatureC, double height) {
        return height * (1 - now.curve().icePercentAt(temperatureC) / 100);
    }

    private Node crystal(BatchAnalysis is) {
        Pane pane = sized(2 * SmallShapes.MOST_EM * em(), HEIGHT_EM * em());
        is.crystals()
                .ifPresent(
                        one ->
                                pane.getChildren()
                                        .addAll(
                                                SmallShapes.crystal(
                                                        SmallShapes.MOST_EM * em(),
                                                        HEIGHT_EM * em() / 2,
                                                        one.tasted().meanUm().middle(),
                                                        em())));
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
