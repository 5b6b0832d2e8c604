package org.amberyard.core.tariff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class BillYearTest {
    /** Peak of 100 kW in January, 10 kW else; 60 % of it is held by the facilities demand for eleven months. */
    private static final List<MeterMonth> JANUARY_PEAK = Loads.year(100, 10, 10, 10, 10, 10, 10, 10, 10, 10, 10, 10);
    private static final List<MeterMonth> DECEMBER_PEAK = Loads.year(10, 10, 10, 10, 10, 10, 10, 10, 10, 10, 10, 100);

    private static double facilitiesKw(BillYear year, int month) {
        return year.bills().get(month).lines().get(4).quantity();
    }

    @Test
    void aSteadyYearRemembersItself() {
        BillYear steady = BillYear.steady(ExampleTariffs.generalService(), 1, DECEMBER_PEAK);
        assertEquals(60, facilitiesKw(steady, 0), 1e-12);
        assertEquals(60, facilitiesKw(steady, 10), 1e-12);
        assertEquals(100, facilitiesKw(steady, 11), 1e-12);
    }

    @Test
    void aNewServiceRemembersNothing() {
        BillYear first = BillYear.after(ExampleTariffs.generalService(), 1, DECEMBER_PEAK, PeakHistory.NONE);
        assertEquals(10, facilitiesKw(first, 0), 1e-12);
        assertEquals(10, facilitiesKw(first, 10), 1e-12);
    }

    @Test
    void aPeakIsForgottenAfterElevenMonths() {
        List<MeterMonth> quiet = Loads.year(10);
        BillYear after = BillYear.after(ExampleTariffs.generalService(), 2, quiet, new PeakHistory(JANUARY_PEAK));
        assertEquals(10, facilitiesKw(after, 0), 1e-12);
        BillYear later = BillYear.after(ExampleTariffs.generalService(), 2, quiet, new PeakHistory(DECEMBER_PEAK));
        assertEquals(60, facilitiesKw(later, 10), 1e-12);
        assertEquals(10, facilitiesKw(later, 11), 1e-12);
    }

    @Test
    void flatTariffBillsAsTheSumOfItsParts() {
        BillParts parts = BillYear.steady(Tariff.flat("Flat", 68, 0.1, 0.02, 7.8, 0.05), 1, JANUARY_PEAK).parts();
        double kwh = 22 * 24 * (100 + 11 * 10);
        assertEquals(1.05 * kwh * 0.12, parts.energy(), 1e-9);
        assertEquals(1.05 * (100 + 11 * 10) * 7.8, parts.demand(), 1e-9);
        assertEquals(1.05 * 12 * 68, parts.fixed(), 1e-9);
    }

    @Test
    void aYearHasTwelveMonths() {
        List<MeterMonth> few = JANUARY_PEAK.subList(0, 11);
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> BillYear.steady(ExampleTariffs.generalService(), 1, few));
        assertEquals("a year of bills needs 12 months, not 11", refused.getMessage());
    }
}
