package coldwright.desk.figure;

import java.util.concurrent.Executor;

/**
 * What plates are drawn with.
 *
 * @param painter draws figures
 * @param work a thread to draw on
 * @param window the window's thread
 */
public record RenderContext(FigurePainter painter, Executor work, Executor window) {}
