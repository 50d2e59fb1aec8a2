package coldwright.desk.figure;

import coldwright.paint.style.FigureFormat;

import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

/**
 * Has one plate painted on the pen's thread. Of all that was asked for while it paints, only the
 * newest is painted next; so nothing queues up, and the plate follows as fast as it can.
 */
final class LatestRender {
    private final RenderContext context;
    private final Consumer<FigureImage> done;
    private final Consumer<Throwable> broke;
    private PendingRender waiting;
    private boolean busy;

    private record PendingRender(RenderRequest request, FigureFormat sheet) {}

    /**
     * Makes a brush.
     *
     * @param renderContext what paints
     * @param done takes, on the window's thread, what was painted
     * @param broke takes what went wrong
     */
    LatestRender(
            RenderContext renderContext, Consumer<FigureImage> done, Consumer<Throwable> broke) {
        this.context = renderContext;
        this.done = done;
        this.broke = broke;
    }

    /** Asks for a painting, on the window's thread; what was asked for and not begun is dropped. */
    void ask(RenderRequest renderRequest, FigureFormat sheet) {
        waiting = new PendingRender(renderRequest, sheet);
        if (!busy) {
            start();
        }
    }

    private void start() {
        PendingRender pendingRender = waiting;
        waiting = null;
        busy = true;
        CompletableFuture.supplyAsync(
                        () ->
                                context.painter()
                                        .paint(pendingRender.request(), pendingRender.sheet()),
                        context.work())
                .whenCompleteAsync(
                        (figureImage, trouble) -> {
                            busy = false;
                            if (waiting != null) {
                                start();
                            }
                            if (trouble == null) {
                                done.accept(figureImage);
                            } else {
                                broke.accept(trouble);
                            }
                        },
                        context.window());
    }
}
