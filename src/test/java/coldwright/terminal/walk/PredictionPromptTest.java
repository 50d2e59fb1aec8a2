package coldwright.terminal.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.lesson.ExpectedAnswer;
import coldwright.lesson.LessonPart;
import coldwright.terminal.TypedSession;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.List;

class PredictionPromptTest {
    private static final LessonPart.Prediction CHOICE =
            new LessonPart.Prediction(
                    1,
                    "Soft?",
                    new ExpectedAnswer.Choice(List.of("yes", "no"), 1),
                    List.of(),
                    List.of());
    private static final LessonPart.Prediction NUMBER =
            new LessonPart.Prediction(
                    1,
                    "How cold?",
                    new ExpectedAnswer.Amount(-1.5, "°C", 0.5),
                    List.of(),
                    List.of());

    private static String revealed(LessonPart.Prediction prediction, TypedSession typedSession) {
        PredictionPrompt predictionPrompt = PredictionPrompt.ask(prediction, typedSession.screen());
        int before = typedSession.out().length();
        predictionPrompt.reveal(List.of(), typedSession.screen());
        return typedSession.out().substring(before).strip();
    }

    @Test
    void showsTheQuestionAndItsChoices() {
        TypedSession typedSession = TypedSession.nobody();
        PredictionPrompt.ask(CHOICE, typedSession.screen());
        assertEquals("What do you predict? Soft?\n  a  yes\n  b  no\n\n", typedSession.out());
    }

    @Test
    void comparesALetter() {
        assertEquals(
                "Your prediction was right: no.", revealed(CHOICE, TypedSession.somebody("B")));
        assertEquals(
                "Your prediction: yes. The answer: no.",
                revealed(CHOICE, TypedSession.somebody(" a ")));
    }

    @Test
    void comparesANumberHoweverItIsTyped() {
        for (String typed : List.of("-2", "−2,0", "-2.0°C", "–2 °c")) {
            assertEquals(
                    "Your prediction was right: −2 °C. The answer: −1.5 °C, within 0.5.",
                    revealed(NUMBER, TypedSession.somebody(typed)));
        }
        assertEquals(
                "Your prediction: 3 °C. The answer: −1.5 °C, within 0.5.",
                revealed(NUMBER, TypedSession.somebody("3")));
    }

    @Test
    void asksAgainWhatItDoesNotUnderstand() {
        TypedSession typedSession = TypedSession.somebody("c", "yes", "b");
        assertEquals("Your prediction was right: no.", revealed(CHOICE, typedSession));
        assertEquals(2, typedSession.out().split("is not a letter from a to b", -1).length - 1);
    }

    @Test
    void asksUntilTheAnswerIsUnderstoodOrEmpty() {
        String plain = "The answer: no.";
        assertEquals(
                "Your prediction was right: no.",
                revealed(CHOICE, TypedSession.somebody("x", "y", "z", "c", "b")));
        assertEquals(plain, revealed(CHOICE, TypedSession.somebody("")));
        assertEquals(plain, revealed(CHOICE, TypedSession.somebody()));
        assertEquals(plain, revealed(CHOICE, TypedSession.nobody()));
        assertEquals(
                "The answer: −1.5 °C, within 0.5.",
                revealed(NUMBER, TypedSession.somebody("1e9", "NaN", "0x1")));
    }

    private static final LessonPart.Prediction CURVE =
            new LessonPart.Prediction(
                    1,
                    "How does it fall?",
                    new ExpectedAnswer.Curve(
                            new ExpectedAnswer.Scale("sugar", 0, 40, "%"),
                            new ExpectedAnswer.Scale("freezing point", -12, 0, "°C")),
                    List.of(),
                    List.of());
    private static final Figure FALLING =
            Figure.of("Falling")
                    .line("computed", new double[] {0, 20, 30}, new double[] {0, -2, -4});

    private static String besideCurve(List<Figure> figures, String... typed) {
        TypedSession somebody = TypedSession.somebody(typed);
        PredictionPrompt predictionPrompt = PredictionPrompt.ask(CURVE, somebody.screen());
        int before = somebody.out().length();
        predictionPrompt.reveal(figures, somebody.screen());
        return somebody.out().substring(before).strip().replace('\n', ' ');
    }

    @Test
    void putsTypedPointsBesideTheFirstCurve() {
        assertEquals(
                "Your prediction: at 10 % −3 °C, at 25 % −6.5 °C, at 40 % −9 °C. The answer: at 10 % −1 °C, at 25 % −3 °C.",
                besideCurve(List.of(FALLING), "10 -3; 25 −6,5; 40 –9"));
        assertEquals(
                "Your prediction: at 10 % −3 °C. The answer: the first curve of the result.",
                besideCurve(List.of(), "10 -3"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "10 -3; 25 -6,5",
                "10 -3, 25 -6.5",
                "10, -3; 25, -6.5",
                "10,-3,25,-6.5",
                "10 −3 ;25 −6.5;"
            })
    void pointsMayBePartedByCommas(String typed) {
        String said = besideCurve(List.of(FALLING), typed);
        assertTrue(said.startsWith("Your prediction: at 10 % −3 °C, at 25 % −6.5 °C."), said);
    }

    @Test
    void whatIsNotPointsIsAskedAgain() {
        TypedSession session = TypedSession.somebody("10 -3,5, 20 -4", "10; -3", "20 -4");
        String said = revealed(CURVE, session);
        assertTrue(said.startsWith("Your prediction: at 20 % −4 °C."), said);
        assertEquals(2, session.out().split("is not one to", -1).length - 1);
    }

    @Test
    void aCurveMayBeLeftOut() {
        String plain = "The answer: the first curve of the result.";
        assertEquals(plain, besideCurve(List.of(FALLING), ""));
        assertEquals(plain, besideCurve(List.of(FALLING), "10", "41 -3", "10 -3; 20 5"));
    }

    @Test
    void saysOfPointsOffTheAxesHowFarTheseGo() {
        TypedSession typedSession = TypedSession.at(200, "41 -3", "");
        PredictionPrompt.ask(CURVE, typedSession.screen());
        assertTrue(
                typedSession
                        .out()
                        .contains(
                                "\"41 -3\" is off the axes: sugar goes from 0 to 40 %, freezing point goes from −12 to 0 °C."),
                typedSession.out());
    }

    /** A rising example under a question about a falling line hints at a wrong answer. */
    @Test
    void theExampleOfPointsHintsAtNoAnswer() {
        TypedSession typedSession = TypedSession.at(200, "");
        PredictionPrompt.ask(CURVE, typedSession.screen());
        assertTrue(
                typedSession
                        .out()
                        .contains(
                                "(points of the curve: sugar in %, then freezing point in °C, such as 10 −6; 20 −6; Enter to skip"),
                typedSession.out());
    }

    @Test
    void saysWhatPointsToType() {
        TypedSession typedSession = TypedSession.at(200, "x", "");
        PredictionPrompt.ask(CURVE, typedSession.screen());
        assertEquals(
                "\"x\" is not one to 20 points. Type them as: 10 −6; 20 −6",
                typedSession
                        .out()
                        .lines()
                        .filter(line -> line.startsWith("\""))
                        .findFirst()
                        .orElse(""));
    }
}
