package coldwright.desk.layout;

import javafx.animation.AnimationTimer;

/** Work that waits until the window has been drawn, so that drawing never waits for it. */
public final class AfterFrame {
    private AfterFrame() {}

    /**
     * Runs something on the window's thread once so many frames have been drawn.
     *
     * @param count how many, 1 or more; the first lays out, the second is on the screen
     * @param next what to run then
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
