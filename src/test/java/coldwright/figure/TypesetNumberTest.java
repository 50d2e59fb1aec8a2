package coldwright.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypesetNumberTest {
    @ParameterizedTest
    @CsvSource({
        "0, 1, 0",
        "-0.0, 0.5, 0.0",
        "-0.001, 0.1, 0.0",
        "-18, 1, −18",
        "-2.5, 0.5, −2.5",
        "2.5, 0.05, 2.50",
        "1234, 1, 1234",
        "12345.5, 0.5, 12 345.5",
        "-1234567, 1, −1 234 567",
        "0.000003, 0.000001, 0.000003",
        "0.0000003, 0.0000001, 3·10⁻⁷",
        "2.5e9, 5e8, 2.5·10⁹",
        "-3e23, 1e23, −3·10²³",
        "NaN, 1, –",
        "Infinity, 1, ∞",
        "-Infinity, 1, −∞",
    })
    void numbersAreSetAsInABook(double value, double step, String set) {
        assertEquals(set.replace(' ', '\u2009'), TypesetNumber.of(value, step));
    }

    @ParameterizedTest
    @CsvSource({
        "-3.42, 3.42, −3.4",
        "40, 40, 40",
        "0.5, 1, 0.50",
        "7, 0, 7.0",
        "1e300, Infinity, 1.00·10³⁰⁰"
    })
    void neighboursDecideHowFinely(double value, double width, String set) {
        assertEquals(set, TypesetNumber.among(value, width));
    }

    @ParameterizedTest
    @CsvSource({"0, 3, 0", "-3.42, 3, −3.4", "40, 40, 40", "2.5, 1, 2.5", "1e300, 1e300, 1·10³⁰⁰"})
    void aSentenceHasNoNeedlessZeros(double value, double width, String set) {
        assertEquals(set, TypesetNumber.plain(value, width));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "2e8, 0.2·10⁹", "1e9, 1.0·10⁹"})
    void aRowSharesItsPowerOfTen(double value, String set) {
        assertEquals(set, TypesetNumber.of(value, 2e8, 1e9));
    }
}
