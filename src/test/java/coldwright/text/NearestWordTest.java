package coldwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;

class NearestWordTest {
    private static final List<String> WORDS = List.of("java", "java given", "forecast", "check");

    @ParameterizedTest
    @CsvSource({
        "jaav, java",
        "JAVA, java",
        "jav, java",
        "java givn, java given",
        "forcast, forecast",
        "forecats, forecast",
        "chek, check",
        "python, ''",
        "x, ''",
        "'', ''"
    })
    void namesTheNearestWordThatIsNearEnough(String typed, String nearest) {
        assertEquals(nearest, NearestWord.to(typed, WORDS).orElse(""));
    }
}
