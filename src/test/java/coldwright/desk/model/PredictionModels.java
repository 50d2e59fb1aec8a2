package coldwright.desk.model;

import coldwright.desk.lesson.model.PredictionModel;
import coldwright.lesson.ExpectedAnswer;
import coldwright.lesson.LessonPart;

import java.util.List;

/** Questions for tests of their views. */
public final class PredictionModels {
    private PredictionModels() {}

    /** Asks for a freezing curve. */
    public static PredictionModel ofACurve() {
        ExpectedAnswer.Scale level = new ExpectedAnswer.Scale("sucrose", 0, 40, "%");
        ExpectedAnswer.Scale upright = new ExpectedAnswer.Scale("freezing point", -6, 0, "°C");
        return new PredictionModel(
                new LessonPart.Prediction(
                        1,
                        "How does it fall?",
                        new ExpectedAnswer.Curve(level, upright),
                        List.of(),
                        List.of()));
    }
}
