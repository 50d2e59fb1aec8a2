package coldwright.science.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LowMidHighTest {
    @Test
    void eachCornerKeepsItsPlace() {
        assertEquals(new LowMidHigh<>(2, 4, 6), new LowMidHigh<>(1, 2, 3).map(x -> 2 * x));
    }
}
