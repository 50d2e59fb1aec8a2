package coldwright.desk.figure;

import java.util.concurrent.Executor;

/**
 * The painter and threads for figures.
 *
 * @param painter draws figures
 * @param work a thread to draw on
 * @param window the window's thread
 */
public record RenderContext(FigurePainter painter, Executor work, Executor window) {}
