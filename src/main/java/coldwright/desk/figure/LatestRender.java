package coldwright.desk.figure;

import coldwright.paint.style.FigureFormat;

import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

/**
 * Paints one figure on the drawing thread. Only the newest of the requests that arrive meanwhile is
 * painted next, so requests never queue up.
 */
final class LatestRender {
    private final RenderContext context;
    private final Consumer<FigureImage> done;
    private final Consumer<Throwable> broke;
    private PendingRender waiting;
    private boolean busy;

    private record PendingRender(RenderRequest request, FigureFormat format) {}

    /** Makes a renderer; image and exception come on the window's thread. */
    LatestRender(
            RenderContext renderContext, Consumer<FigureImage> done, Consumer<Throwable> broke) {
        this.context = renderContext;
        this.done = done;
        this.broke = broke;
    }

    /** Requests an image, on the window's thread; replaces a request that hasn't started. */
    void ask(RenderRequest renderRequest, FigureFormat format) {
        waiting = new PendingRender(renderRequest, format);
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
                                        .paint(pendingRender.request(), pendingRender.format()),
                        context.work())
                .whenCompleteAsync(
                        (figureImage, error) -> {
                            busy = false;
                            if (waiting != null) {
                                start();
                            }
                            if (error == null) {
                                done.accept(figureImage);
                            } else {
                                broke.accept(error);
                            }
                        },
                        context.window());
    }
}
