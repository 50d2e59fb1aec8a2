package coldwright.desk.figure;

import java.util.concurrent.Executor;

/** The painter of figures, a thread to draw on, and the window's thread. */
public record RenderContext(FigurePainter painter, Executor work, Executor window) {}
