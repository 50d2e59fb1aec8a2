package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.lesson.Answer;
import coldwright.lesson.Part;

import org.junit.jupiter.api.Test;

import java.util.List;

class AskedTest {
    private static final Part.Forecast CHOICE =
            new Part.Forecast(1, "Soft?", new Answer.Choice(List.of("yes", "no"), 1), List.of());
    private static final Part.Forecast NUMBER =
            new Part.Forecast(1, "How cold?", new Answer.Amount(-1.5, "°C", 0.5), List.of());

    private static String revealed(Part.Forecast forecast, Typed typed) {
        Asked asked = Asked.ask(forecast, typed.screen());
        int before = typed.out().length();
        asked.reveal(List.of(), typed.screen());
        return typed.out().substring(before).strip();
    }

    @Test
    void showsTheQuestionAndItsChoices() {
        Typed typed = Typed.nobody();
        Asked.ask(CHOICE, typed.screen());
        assertEquals("What do you expect? Soft?\n  a  yes\n  b  no\n\n", typed.out());
    }

    @Test
    void comparesALetter() {
        assertEquals("You said: no. That is right.", revealed(CHOICE, Typed.somebody("B")));
        assertEquals("You said: yes. The answer: no.", revealed(CHOICE, Typed.somebody(" a ")));
    }

    @Test
    void comparesANumberHoweverItIsTyped() {
        for (String typed : List.of("-2", "−2,0", "-2.0°C", "–2 °c")) {
            assertEquals(
                    "You said: −2 °C. That is right. The answer: −1.5 °C; within 0.5 counts as right.",
                    revealed(NUMBER, Typed.somebody(typed)));
        }
        assertEquals(
                "You said: 3 °C. The answer: −1.5 °C; within 0.5 counts as right.",
                revealed(NUMBER, Typed.somebody("3")));
    }

    @Test
    void asksAgainWhatItDoesNotUnderstand() {
        Typed typed = Typed.somebody("c", "yes", "b");
        assertEquals("You said: no. That is right.", revealed(CHOICE, typed));
        assertEquals(2, typed.out().split("is not a letter from a to b", -1).length - 1);
    }

    @Test
    void givesUpAsking() {
        String plain = "The answer: no.";
        assertEquals(plain, revealed(CHOICE, Typed.somebody("x", "y", "z", "b")));
        assertEquals(plain, revealed(CHOICE, Typed.somebody("")));
        assertEquals(plain, revealed(CHOICE, Typed.somebody()));
        assertEquals(plain, revealed(CHOICE, Typed.nobody()));
        assertEquals(
                "The answer: −1.5 °C; within 0.5 counts as right.",
                revealed(NUMBER, Typed.somebody("1e9", "NaN", "0x1")));
    }

    private static final Part.Forecast CURVE =
            new Part.Forecast(
                    1,
                    "How does it fall?",
                    new Answer.Curve(
                            new Answer.Scale("sugar", 0, 40, "%"),
                            new Answer.Scale("freezing point", -12, 0, "°C")),
                    List.of());
    private static final Figure FALLING =
            Figure.of("Falling")
                    .line("computed", new double[] {0, 20, 30}, new double[] {0, -2, -4});

    private static String besideCurve(List<Figure> figures, String... typed) {
        Typed somebody = Typed.somebody(typed);
        Asked asked = Asked.ask(CURVE, somebody.screen());
        int before = somebody.out().length();
        asked.reveal(figures, somebody.screen());
        return somebody.out().substring(before).strip().replace('\n', ' ');
    }

    @Test
    void putsTypedPointsBesideTheFirstCurve() {
        assertEquals(
                "You said: at 10 % −3 °C, at 25 % −6.5 °C, at 40 % −9 °C. The answer: at 10 % −1 °C, at 25 % −3 °C.",
                besideCurve(List.of(FALLING), "10 -3; 25 −6,5; 40 –9"));
        assertEquals(
                "You said: at 10 % −3 °C. The answer: the first curve of the result.",
                besideCurve(List.of(), "10 -3"));
    }

    @Test
    void aCurveMayBeLeftOut() {
        String plain = "The answer: the first curve of the result.";
        assertEquals(plain, besideCurve(List.of(FALLING), ""));
        assertEquals(plain, besideCurve(List.of(FALLING), "10", "41 -3", "10 -3; 20 5"));
    }

    @Test
    void saysOfPointsOffTheAxesHowFarTheseGo() {
        Typed typed = Typed.at(200, "41 -3", "");
        Asked.ask(CURVE, typed.screen());
        assertTrue(
                typed.out()
                        .contains(
                                "\"41 -3\" lies off the axes; sugar goes from 0 to 40 %, freezing point goes from −12 to 0 °C."),
                typed.out());
    }

    /** A rising example under a question about a falling line hints at a wrong answer. */
    @Test
    void theExampleOfPointsHintsAtNoAnswer() {
        Typed typed = Typed.at(200, "");
        Asked.ask(CURVE, typed.screen());
        assertTrue(
                typed.out()
                        .contains(
                                "(points of the curve: sugar in %, then freezing point in °C, such as 10 −6; 20 −6; Enter to leave"),
                typed.out());
    }

    @Test
    void saysWhatPointsToType() {
        Typed typed = Typed.at(200, "x", "");
        Asked.ask(CURVE, typed.screen());
        assertEquals(
                "\"x\" is not one to 20 points; type them as: 10 −6; 20 −6.",
                typed.out().lines().filter(line -> line.startsWith("\"")).findFirst().orElse(""));
    }
}
