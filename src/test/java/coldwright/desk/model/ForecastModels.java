package coldwright.desk.model;

import coldwright.lesson.Answer;
import coldwright.lesson.Part;

import java.util.List;

/** Questions for tests of their views. */
public final class ForecastModels {
    private ForecastModels() {}

    /** Asks for a freezing curve. */
    public static ForecastModel ofACurve() {
        Answer.Scale level = new Answer.Scale("sucrose", 0, 40, "%");
        Answer.Scale upright = new Answer.Scale("freezing point", -6, 0, "°C");
        return new ForecastModel(
                new Part.Forecast(
                        1, "How does it fall?", new Answer.Curve(level, upright), List.of()));
    }
}
