package coldwright.workbook.handin;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.lesson.ExpectedAnswer;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;

/** One judgement serves window, walk and marking. */
class PredictionOutcomeTest {
    private static final ExpectedAnswer AMOUNT = new ExpectedAnswer.Amount(-1.5, "°C", 0.5);
    private static final ExpectedAnswer CHOICE =
            new ExpectedAnswer.Choice(List.of("pale", "brown"), 1);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-1.2 | YES",
                "−1,2 | YES",
                "- 1.2 °C | YES",
                "–2°c | YES",
                "-2.01 | NO",
                "1.5 °C | NO",
                "cold | OPEN",
                "1e1 | OPEN",
                "NaN | OPEN",
                "°C | OPEN",
                "'' | OPEN"
            })
    void aNumberIsJudgedHoweverItIsTyped(String said, PredictionOutcome outcome) {
        assertEquals(outcome, PredictionOutcome.of(AMOUNT, said));
    }

    @ParameterizedTest
    @CsvSource({"brown, YES", "pale, NO", "'', OPEN"})
    void aChoiceIsJudgedByItsWords(String said, PredictionOutcome outcome) {
        assertEquals(outcome, PredictionOutcome.of(CHOICE, said));
    }
}
