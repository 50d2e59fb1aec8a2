package coldwright.desk.page;

import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.PageState;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.messages.Typography;
import coldwright.figure.UnitConversion;
import coldwright.words.Words;

import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;

import java.util.ArrayList;
import java.util.List;

/**
 * The picture on the home page: how much of a sorbet is ice in a freezer, by its sugar. One dial
 * moves its freezing curve, its crystals and the sentence below.
 */
final class LivingPicture extends VBox {
    private static final double HEIGHT_EM = 11;
    private static final double SIDE_EM = 3.2;
    private static final double FOOT_EM = 1.6;
    private static final double FIELD_EM = 14;
    private static final double STEP_G = 10;

    private final PageState state;
    private final Slider sugar =
            new Slider(HomeSorbet.LEAST_G, HomeSorbet.MOST_G, HomeSorbet.FIRST_G);
    private final Label amount = TextControls.styled(new Label(), "home-amount");
    private final Label sentence = TextControls.label("", "home-sentence");
    private final Region drawing = new Drawn();
    private HomeSorbet sorbet = HomeSorbet.with(HomeSorbet.FIRST_G);

    LivingPicture(PageState state) {
        this.state = state;
        getStyleClass().add("home-picture");
        Label name = new Label(Messages.of("home.picture.dial"));
        name.setLabelFor(sugar);
        name.setMinWidth(USE_PREF_SIZE);
        amount.setMinWidth(USE_PREF_SIZE);
        sugar.setBlockIncrement(STEP_G);
        sugar.setAccessibleText(Messages.of("home.picture.dial"));
        HBox.setHgrow(sugar, Priority.ALWAYS);
        HBox dial = TextControls.styled(new HBox(name, sugar, amount), "home-dial");
        dial.setAlignment(Pos.CENTER_LEFT);
        getChildren()
                .addAll(
                        TextControls.label(Messages.of("home.picture.title"), "kicker"),
                        drawing,
                        sentence,
                        dial);
        sugar.valueProperty().addListener((value, was, is) -> turn());
        WhileShown.follow(this, this::turn, state.figureSettings().units(), state.emPx());
        drawing.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        turn();
    }

    private void turn() {
        double grams = Math.round(sugar.getValue() / STEP_G) * STEP_G;
        sorbet = HomeSorbet.with(grams);
        UnitConversion units = state.figureSettings().units().get();
        String mass =
                units.ounces() ? Words.shown(1, units.value(grams, "g")) : Words.shown(0, grams);
        amount.setText(Typography.of(mass + " " + units.unit("g")));
        sentence.setText(
                Typography.of(
                        Messages.of(
                                "home.picture.sentence",
                                temperature(HomeSorbet.FREEZER_C),
                                Words.shown(0, sorbet.icePercent()),
                                sorbet.firmness().phrase().shown())));
        drawing.setAccessibleText(Messages.of("home.picture.spoken", sentence.getText()));
        drawing.requestLayout();
    }

    private String temperature(double celsius) {
        UnitConversion units = state.figureSettings().units().get();
        return Words.shown(0, units.value(celsius, "°C")) + " " + units.unit("°C");
    }

    /** The curve on the left, the crystals on the right. */
    private final class Drawn extends Region {
        private double em;

        @Override
        protected double computePrefHeight(double width) {
            return HEIGHT_EM * state.emPx().get();
        }

        @Override
        protected double computeMinHeight(double width) {
            return computePrefHeight(width);
        }

        @Override
        protected void layoutChildren() {
            em = state.emPx().get();
            List<Node> nodes = new ArrayList<>();
            double field = Math.min(FIELD_EM * em, getWidth() * 0.38);
            double plot = getWidth() - field - (SIDE_EM + 1.5) * em;
            double height = getHeight() - FOOT_EM * em;
            if (plot > 0 && height > 0) {
                curve(nodes, SIDE_EM * em, plot, height);
                crystals(nodes, getWidth() - field, field, height);
            }
            getChildren().setAll(nodes);
            nodes.stream().filter(Label.class::isInstance).forEach(Node::autosize);
        }

        private void curve(List<Node> nodes, double left, double width, double height) {
            double[] ice = sorbet.icePercents();
            List<Double> line = new ArrayList<>();
            for (int i = ice.length - 1; i >= 0; i--) {
                line.add(x(-i * HomeSorbet.STEP_C, left, width));
                line.add(y(ice[i], height));
            }
            List<Double> area = new ArrayList<>(line);
            area.addAll(List.of(left + width, height, left, height));
            Polygon below = new Polygon();
            below.getPoints().addAll(area);
            Polyline curve = new Polyline();
            curve.getPoints().addAll(line);
            double freezer = x(HomeSorbet.FREEZER_C, left, width);
            double there = y(sorbet.icePercent(), height);
            nodes.add(TextControls.styled(below, "home-area"));
            nodes.add(
                    TextControls.styled(new Line(left, height, left + width, height), "home-axis"));
            nodes.add(TextControls.styled(new Line(left, 0, left, height), "home-axis"));
            nodes.add(TextControls.styled(new Line(freezer, 0, freezer, height), "home-mark"));
            nodes.add(TextControls.styled(new Line(left, there, freezer, there), "home-mark"));
            nodes.add(TextControls.styled(curve, "home-curve"));
            for (int percent = 0; percent <= 100; percent += 50) {
                label(nodes, percent + " %", 0, y(percent, height) - 0.55 * em);
            }
            for (int degrees : new int[] {-20, -10, 0}) {
                double at = x(degrees, left, width) - 1.6 * em;
                label(nodes, temperature(degrees), at, height + 0.2 * em);
            }
            label(nodes, Messages.of("home.picture.ice"), left + 0.6 * width, 0);
        }

        private double x(double celsius, double left, double width) {
            return left + width * (1 - celsius / HomeSorbet.COLDEST_C);
        }

        private double y(double percent, double height) {
            double top = 0.6 * em;
            return top + (height - top) * (1 - percent / 100);
        }

        private void crystals(List<Node> nodes, double left, double width, double height) {
            nodes.add(TextControls.styled(new Rectangle(left, 0, width, height), "home-field"));
            Group ice = new Group();
            double share = sorbet.iceVolumePercent() / 100;
            for (double[] corners : CrystalTiling.cells(width, height, share)) {
                Polygon crystal = new Polygon(corners);
                ice.getChildren().add(TextControls.styled(crystal, "home-crystal"));
            }
            ice.setClip(new Rectangle(width, height));
            ice.setManaged(false);
            ice.setLayoutX(left);
            nodes.add(ice);
            label(nodes, Messages.of("home.picture.crystals"), left, height + 0.2 * em);
        }

        private void label(List<Node> nodes, String words, double x, double y) {
            Label label = TextControls.styled(new Label(Typography.of(words)), "home-tick");
            label.relocate(x, y);
            nodes.add(label);
        }
    }
}
