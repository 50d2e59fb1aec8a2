package coldwright.desk.page;

import coldwright.desk.model.Drawn;
import coldwright.figure.FigureText;
import coldwright.paint.Picture;
import coldwright.paint.Sheet;

import javafx.animation.PauseTransition;
import javafx.scene.AccessibleRole;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

import java.nio.IntBuffer;
import java.util.concurrent.CompletableFuture;

/** A figure as a plate: the drawing, sharp on any screen, with its caption and sources under it. */
final class PlateView extends VBox {
    private static final double HEIGHT_OF_WIDTH = 0.72;
    private static final double HEIGHT_OF_NARROW = 0.92;
    private static final double NARROW_EM = 16;
    private static final double WIDE_EM = 24;
    private static final double TYPE_OF_EM = 0.74;
    private static final int LEAST_WIDTH = 60;
    private static final Duration PAUSE = Duration.millis(60);

    private static final System.Logger LOG = System.getLogger("coldwright.desk");

    private final Pens pens;
    private final Face face = new Face();
    private final PauseTransition pause = new PauseTransition(PAUSE);
    private double emPx = 18;
    private Drawn drawn;
    private Sheet asked;
    private int round;

    PlateView(Pens pens) {
        this.pens = pens;
        getStyleClass().add("plate");
        pause.setOnFinished(event -> paint());
    }

    /** Shows a figure. */
    void show(Drawn is) {
        drawn = is;
        asked = null;
        getChildren().setAll(face);
        if (!is.exhibit().sources().isEmpty()) {
            String sources = String.join("; ", is.exhibit().sources());
            getChildren().add(Words.label(sources, "plate-source"));
        }
        face.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        face.setAccessibleText(FigureText.describe(is.exhibit()));
        paint();
    }

    /** Sets the size of the type it is drawn in. */
    void setEm(double px) {
        if (px != emPx) {
            emPx = px;
            pause.playFromStart();
        }
    }

    private void paint() {
        if (drawn == null || getScene() == null || face.getWidth() < LEAST_WIDTH) {
            return;
        }
        double scale =
                getScene().getWindow() == null ? 1 : getScene().getWindow().getOutputScaleX();
        Sheet sheet =
                Sheet.of(face.innerWidth(), face.innerHeight())
                        .withScale(Math.max(1, Math.min(4, scale)))
                        .withType(Math.max(8, Math.min(40, emPx * TYPE_OF_EM)));
        if (sheet.equals(asked)) {
            return;
        }
        asked = sheet;
        int thisRound = ++round;
        Drawn what = drawn;
        CompletableFuture.supplyAsync(() -> pens.painter().paint(what, sheet), pens.work())
                .whenCompleteAsync(
                        (picture, trouble) -> {
                            if (trouble == null) {
                                took(picture, thisRound);
                            } else {
                                broke(trouble);
                            }
                        },
                        pens.window());
    }

    private void broke(Throwable trouble) {
        LOG.log(System.Logger.Level.ERROR, "a figure can't be drawn", trouble);
        getChildren().setAll(Words.label("This figure can’t be drawn.", "note"));
    }

    private void took(Picture picture, int itsRound) {
        if (itsRound == round) {
            face.image.setImage(imageOf(picture));
            face.requestLayout();
        }
    }

    private static WritableImage imageOf(Picture picture) {
        return new WritableImage(
                new PixelBuffer<>(
                        picture.widthPx(),
                        picture.heightPx(),
                        IntBuffer.wrap(picture.argbPremultiplied()),
                        PixelFormat.getIntArgbPreInstance()));
    }

    /** The drawing's place, which keeps its shape; a picture made for another size is stretched. */
    private final class Face extends Region {
        private final ImageView image = new ImageView();

        Face() {
            getStyleClass().add("plate-face");
            image.setSmooth(true);
            image.setManaged(false);
            getChildren().add(image);
            sceneProperty().addListener(value -> pause.playFromStart());
        }

        @Override
        public javafx.geometry.Orientation getContentBias() {
            return javafx.geometry.Orientation.HORIZONTAL;
        }

        private int innerWidth() {
            return (int) (getWidth() - snappedLeftInset() - snappedRightInset());
        }

        private int innerHeight() {
            return (int) (getHeight() - snappedTopInset() - snappedBottomInset());
        }

        @Override
        protected double computePrefHeight(double width) {
            double narrow =
                    Math.max(0, Math.min(1, (WIDE_EM - width / emPx) / (WIDE_EM - NARROW_EM)));
            double share = HEIGHT_OF_WIDTH + narrow * (HEIGHT_OF_NARROW - HEIGHT_OF_WIDTH);
            return Math.round(Math.max(LEAST_WIDTH, width) * share);
        }

        @Override
        protected double computeMinHeight(double width) {
            return computePrefHeight(width);
        }

        @Override
        protected void layoutChildren() {
            image.setFitWidth(innerWidth());
            image.setFitHeight(innerHeight());
            image.relocate(snappedLeftInset(), snappedTopInset());
            if (image.getImage() == null) {
                paint();
            } else {
                pause.playFromStart();
            }
        }
    }
}
