package coldwright.science.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CornersTest {
    @Test
    void eachCornerKeepsItsPlace() {
        assertEquals(new Corners<>(2, 4, 6), new Corners<>(1, 2, 3).map(x -> 2 * x));
    }
}
