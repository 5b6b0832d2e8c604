package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.amberyard.core.depot.Port;
import org.junit.jupiter.api.Test;

class PortFleetTest {
    private static final Port SLOW = new Port("Slow", false, 5, 0.9, 0, 0, 0, 10, 20, 0);

    /** The plan buys slow ports, and lists the faster type without buying any. */
    @Test
    void aRowOfNoPortsCountsForNothing() {
        StudyInput study = TinyDistrict.study();
        DepotInput depot = study.depot();
        DepotInput two = new DepotInput(List.of(depot.ports().get(0), SLOW), depot.works(), depot.service(),
                depot.window(),
                depot.metering(), depot.alternatives(), depot.charging());
        VehicleTypeInput electric = study.types().get(TinyDistrict.ELECTRIC);
        PortFleet fleet = new PortFleet(two, List.of(new PlanInput.PortPurchase(0, 1, 2, List.of()),
                new PlanInput.PortPurchase(0, 0, 0, List.of())));
        assertEquals(5 * 0.9, fleet.batteryKw(electric, 0), 1e-12);
    }
}
