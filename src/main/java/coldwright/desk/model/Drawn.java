package coldwright.desk.model;

import coldwright.figure.Figure;

import java.util.Optional;

/**
 * A figure as it stands on the page.
 *
 * @param figure what the last run drew
 * @param earlier what the run before drew in its place, to be set pale behind it
 */
public record Drawn(Figure figure, Optional<Figure> earlier) {}
