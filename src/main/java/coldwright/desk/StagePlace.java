package coldwright.desk;

import coldwright.workbook.settings.WindowPlace;

import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;

import java.util.Optional;

/** Place and size of the window: those of last time, as far as the screens have room. */
final class StagePlace {
    private static final double WIDTH_PX = 1280;
    private static final double HEIGHT_PX = 800;
    private static final double LEAST_WIDTH_PX = 480;
    private static final double LEAST_HEIGHT_PX = 360;

    private final Stage stage;
    private WindowPlace now;

    /**
     * Places a window before it is shown, and follows it.
     *
     * @param last its place of last time
     */
    StagePlace(Stage stage, Optional<WindowPlace> last) {
        this.stage = stage;
        Rectangle2D screen =
                last.flatMap(StagePlace::screenOf).orElse(Screen.getPrimary()).getVisualBounds();
        now = fitted(last, screen);
        stage.setMinWidth(Math.min(LEAST_WIDTH_PX, screen.getWidth()));
        stage.setMinHeight(Math.min(LEAST_HEIGHT_PX, screen.getHeight()));
        stage.setX(now.x());
        stage.setY(now.y());
        stage.setWidth(now.width());
        stage.setHeight(now.height());
        stage.setMaximized(now.maximised());
        stage.xProperty().subscribe(this::follow);
        stage.yProperty().subscribe(this::follow);
        stage.widthProperty().subscribe(this::follow);
        stage.heightProperty().subscribe(this::follow);
        stage.maximizedProperty().subscribe(this::follow);
    }

    private static Optional<Screen> screenOf(WindowPlace last) {
        return Screen.getScreensForRectangle(last.x(), last.y(), last.width(), last.height())
                .stream()
                .findFirst();
    }

    /** The place of last time, moved and shrunk into the screen; by default its middle. */
    static WindowPlace fitted(Optional<WindowPlace> last, Rectangle2D screen) {
        double width =
                Math.min(last.map(WindowPlace::width).orElse((int) WIDTH_PX), screen.getWidth());
        double height =
                Math.min(last.map(WindowPlace::height).orElse((int) HEIGHT_PX), screen.getHeight());
        double mostX = screen.getMaxX() - width;
        double mostY = screen.getMaxY() - height;
        double x = last.map(place -> (double) place.x()).orElse((screen.getMinX() + mostX) / 2);
        double y = last.map(place -> (double) place.y()).orElse((screen.getMinY() + mostY) / 2);
        return new WindowPlace(
                (int) Math.max(screen.getMinX(), Math.min(mostX, x)),
                (int) Math.max(screen.getMinY(), Math.min(mostY, y)),
                (int) width,
                (int) height,
                last.filter(WindowPlace::maximised).isPresent());
    }

    private void follow() {
        boolean usual = !stage.isMaximized() && !stage.isFullScreen() && !stage.isIconified();
        boolean shown = stage.getWidth() >= 1 && stage.getHeight() >= 1;
        if (usual && shown) {
            now =
                    new WindowPlace(
                            (int) stage.getX(),
                            (int) stage.getY(),
                            (int) stage.getWidth(),
                            (int) stage.getHeight(),
                            false);
        } else {
            now = new WindowPlace(now.x(), now.y(), now.width(), now.height(), stage.isMaximized());
        }
    }

    /** Where it is now, or was before it filled the screen. */
    WindowPlace now() {
        return now;
    }
}
