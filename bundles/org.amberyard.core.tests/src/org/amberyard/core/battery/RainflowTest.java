package org.amberyard.core.battery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class RainflowTest {

    /** Full cycles are half the way that the charge goes up and down. */
    @Property
    void halfTheThroughput(@ForAll @Size(min = 1, max = 40) List<@DoubleRange(min = 0, max = 1) Double> history) {
        double way = 0;
        for (int place = 1; place < history.size(); place++) {
            way += Math.abs(history.get(place) - history.get(place - 1));
        }
        double[] values = history.stream().mapToDouble(Double::doubleValue).toArray();
        assertEquals(way / 2, Rainflow.of(values).stream().mapToDouble(c -> c.range() * c.count()).sum(), 1e-9);
    }
}
