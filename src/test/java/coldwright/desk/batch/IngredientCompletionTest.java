package coldwright.desk.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;

class IngredientCompletionTest {
    @ParameterizedTest
    @CsvSource({"salt, salt", "sugar, granulated sugar", "Salt, salt", "dextrose, dextrose"})
    void whatIsUnderstoodAsItStandsIsOfferedFirst(String typed, String first) {
        assertEquals(first, IngredientCompletion.fitting(typed, List.of()).get(0));
    }

    @ParameterizedTest
    @CsvSource({"whole m, whole milk", "hou, house syrup"})
    void whatBeginsSoFollows(String typed, String offered) {
        assertTrue(IngredientCompletion.fitting(typed, List.of("house syrup")).contains(offered));
    }
}
