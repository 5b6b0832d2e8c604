package org.amberyard.core.depot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ServiceYearTest {

    private static ServiceYear year(double connectedKva, double demandKva, double transformerKva, double breakerKva) {
        return new ServiceYear(3, 1, 1, connectedKva, demandKva, transformerKva, breakerKva);
    }

    @Test
    void theSmallerOfTheTwoLimitsCounts() {
        assertEquals(300, year(0, 0, 300, 532).limitKva(), 0);
        assertEquals(200, year(0, 0, 300, 200).limitKva(), 0);
    }

    @Test
    void connectedAndPlannedLoadAreJudgedApart() {
        assertTrue(year(301, 299, 300, 532).connectedExceeds());
        assertFalse(year(301, 299, 300, 532).demandExceeds());
        assertTrue(year(400, 301, 300, 532).demandExceeds());
        assertFalse(year(300, 300, 300, 532).connectedExceeds(), "a full service is not an overload");
        assertFalse(year(300, 300, 300, 532).demandExceeds());
    }

    @Test
    void buildingAndChargingShareThePowerFactor() {
        ServiceInput service = new ServiceInput(480, 800, 300, 0.8, 40);
        assertEquals(100, service.loadKva(40), 1e-12);
        assertEquals(480 * 800 * Math.sqrt(3) / 1000 * 0.8, service.breakerContinuousKva(), 1e-9);
    }
}
