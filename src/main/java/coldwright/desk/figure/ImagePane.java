package coldwright.desk.figure;

import coldwright.desk.layout.WhileShown;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.PixelImage;
import coldwright.paint.style.PlotArea;

import javafx.animation.PauseTransition;
import javafx.geometry.Orientation;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.util.Duration;

import java.nio.IntBuffer;
import java.util.Optional;

/**
 * A pane for a painted image, sharp on any screen, with a fixed aspect ratio. Repainting swaps the
 * image without a layout; an image of another size is stretched until the next one is ready.
 */
abstract class ImagePane extends Region {
    private static final double HEIGHT_OF_WIDTH = 0.72;
    private static final double HEIGHT_OF_NARROW = 0.92;
    private static final double NARROW_EM = 16;
    private static final double WIDE_EM = 24;
    private static final double TYPE_OF_EM = 0.74;
    private static final int LEAST_WIDTH = 60;
    private static final Duration PAUSE = Duration.millis(60);
    private static final System.Logger LOG = System.getLogger("coldwright.desk");

    /** The overlay, in the image's own pixels. */
    final Pane glass = new Pane();

    private final FigureSettings room;
    private final boolean filling;
    private final ImageView image = new ImageView();
    private final LatestRender latestRender;
    private final PauseTransition pause = new PauseTransition(PAUSE);
    private Optional<FigureImage> painted = Optional.empty();
    private FigureFormat askedOn;

    /** Makes a pane; a filling one takes all the available height. */
    ImagePane(FigureSettings room, boolean filling) {
        this.room = room;
        this.filling = filling;
        latestRender = new LatestRender(room.renderContext(), this::took, this::broke);
        getStyleClass().add("figure-canvas");
        image.setSmooth(true);
        image.setManaged(false);
        glass.setManaged(false);
        glass.setMouseTransparent(true);
        getChildren().addAll(image, glass);
        pause.setOnFinished(event -> askIfResized());
        WhileShown.follow(this, pause::playFromStart, room.emPx(), room.theme());
    }

    /** What to paint now; empty for nothing. */
    abstract Optional<RenderRequest> renderRequest();

    /** An image is ready. */
    abstract void rendered(FigureImage is);

    /** Requests an image of the current state. */
    final void ask() {
        format().ifPresent(
                        format ->
                                renderRequest()
                                        .ifPresent(
                                                is -> {
                                                    askedOn = format;
                                                    latestRender.ask(is, format);
                                                }));
    }

    private void askIfResized() {
        if (!format().equals(Optional.ofNullable(askedOn))) {
            ask();
        }
    }

    private Optional<FigureFormat> format() {
        if (getScene() == null || getWidth() < LEAST_WIDTH || innerHeight() < LEAST_WIDTH) {
            return Optional.empty();
        }
        double scale =
                getScene().getWindow() == null ? 1 : getScene().getWindow().getOutputScaleX();
        double type = room.emPx().get() * TYPE_OF_EM * (filling ? 1.15 : 1);
        return Optional.of(
                FigureFormat.of(innerWidth(), innerHeight())
                        .withScale(Math.max(1, Math.min(4, scale)))
                        .withType(Math.max(8, Math.min(40, type)))
                        .withTheme(room.theme().get()));
    }

    private void took(FigureImage is) {
        painted = Optional.of(is);
        image.setImage(imageOf(is.picture()));
        fit();
        rendered(is);
    }

    private void broke(Throwable error) {
        LOG.log(System.Logger.Level.ERROR, "a figure can't be drawn", error);
        image.setImage(null);
        setAccessibleText(Messages.of("figure.undrawable"));
        glass.getChildren().setAll(TextControls.label(Messages.of("figure.undrawable"), "note"));
        glass.getChildren().get(0).autosize();
    }

    static WritableImage imageOf(PixelImage picture) {
        return new WritableImage(
                new PixelBuffer<>(
                        picture.widthPx(),
                        picture.heightPx(),
                        IntBuffer.wrap(picture.argbPremultiplied()),
                        PixelFormat.getIntArgbPreInstance()));
    }

    /** The last image. */
    final Optional<FigureImage> painted() {
        return painted;
    }

    /** The area of its data. */
    final Optional<PlotArea> plot() {
        return painted.flatMap(FigureImage::plot);
    }

    private int innerWidth() {
        return (int) (getWidth() - snappedLeftInset() - snappedRightInset());
    }

    private int innerHeight() {
        return (int) (getHeight() - snappedTopInset() - snappedBottomInset());
    }

    @Override
    public Orientation getContentBias() {
        return filling ? null : Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        if (filling) {
            return LEAST_WIDTH;
        }
        double em = room.emPx().get();
        double narrow = Math.max(0, Math.min(1, (WIDE_EM - width / em) / (WIDE_EM - NARROW_EM)));
        double share = HEIGHT_OF_WIDTH + narrow * (HEIGHT_OF_NARROW - HEIGHT_OF_WIDTH);
        return Math.round(Math.max(LEAST_WIDTH, width) * share);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    private void fit() {
        image.setFitWidth(innerWidth());
        image.setFitHeight(innerHeight());
    }

    @Override
    protected void layoutChildren() {
        fit();
        image.relocate(snappedLeftInset(), snappedTopInset());
        glass.resizeRelocate(snappedLeftInset(), snappedTopInset(), innerWidth(), innerHeight());
        if (image.getImage() == null) {
            askIfResized();
        } else {
            pause.playFromStart();
        }
    }
}
