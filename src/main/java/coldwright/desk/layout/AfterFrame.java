package coldwright.desk.layout;

import javafx.animation.AnimationTimer;

/** Work that waits until the window has been drawn, so that it never delays drawing. */
public final class AfterFrame {
    private AfterFrame() {}

    /**
     * Runs an action on the window's thread once some frames have been drawn, 1 or more; the first
     * lays out, the second is on the screen.
     */
    public static void after(int count, Runnable next) {
        new AnimationTimer() {
            private int drawn;

            @Override
            public void handle(long now) {
                if (++drawn == count) {
                    stop();
                    next.run();
                }
            }
        }.start();
    }
}
