package coldwright.desk.plate;

import coldwright.paint.Sheet;

import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

/**
 * Has one plate painted on the pen's thread. Of all that was asked for while it paints, only the
 * newest is painted next; so nothing queues up, and the plate follows as fast as it can.
 */
final class Brush {
    private final Pens pens;
    private final Consumer<Painted> done;
    private final Consumer<Throwable> broke;
    private Wish waiting;
    private boolean busy;

    private record Wish(Sitting sitting, Sheet sheet) {}

    /**
     * Makes a brush.
     *
     * @param pens what paints
     * @param done takes, on the window's thread, what was painted
     * @param broke takes what went wrong
     */
    Brush(Pens pens, Consumer<Painted> done, Consumer<Throwable> broke) {
        this.pens = pens;
        this.done = done;
        this.broke = broke;
    }

    /** Asks for a painting, on the window's thread; what was asked for and not begun is dropped. */
    void ask(Sitting sitting, Sheet sheet) {
        waiting = new Wish(sitting, sheet);
        if (!busy) {
            begin();
        }
    }

    private void begin() {
        Wish wish = waiting;
        waiting = null;
        busy = true;
        CompletableFuture.supplyAsync(
                        () -> pens.painter().paint(wish.sitting(), wish.sheet()), pens.work())
                .whenCompleteAsync(
                        (painted, trouble) -> {
                            busy = false;
                            if (waiting != null) {
                                begin();
                            }
                            if (trouble == null) {
                                done.accept(painted);
                            } else {
                                broke.accept(trouble);
                            }
                        },
                        pens.window());
    }
}
