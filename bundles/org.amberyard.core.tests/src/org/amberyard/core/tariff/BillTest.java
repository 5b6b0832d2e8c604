package org.amberyard.core.tariff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class BillTest {
    private static final int JULY = 6;
    private static final MeterMonth JULY_LOAD = Loads.month(JULY, Loads.flatWithPeak(50, 17, 15, 200), Loads.flat(20));

    private static List<String> lines(Bill bill) {
        return bill.lines().stream()
                .map(l -> String.format("%s %.1f %s %.4f %.3f", l.label(), l.quantity(), l.unit().label(), l.price(), l.amount()))
                .toList();
    }

    /**
     * Weekdays: on-peak 6 h at 50 kW and 150 kW more for a quarter of an hour, 337.5 kWh; mid-peak 500 kWh; night 400 kWh; a
     * free day 480 kWh. The earlier 400 kW of March hold the facilities demand at 240 kW.
     */
    @Test
    void generalServiceByHand() {
        Bill bill = Bill.of(ExampleTariffs.generalService(), 1, JULY_LOAD, PeakHistory.ofPeaks(2, 400, 60, 60, 60));
        assertEquals(List.of("Customer charge 1.0 month 68.0000 68.000", "On-peak energy 7425.0 kWh 0.1480 1098.900",
                "Mid-peak energy 11000.0 kWh 0.1040 1144.000", "Off-peak energy 13120.0 kWh 0.0660 865.920",
                "Facilities demand 240.0 kW 7.8000 1872.000", "On-peak demand 200.0 kW 11.4000 2280.000",
                "Power supply rider 31545.0 kWh 0.0062 195.579"), lines(bill));
        assertEquals(7524.399, bill.total(), 1e-9);
        assertEquals(new BillParts(1098.9 + 1144 + 865.92 + 195.579, 4152, 68).energy(), bill.parts().energy(), 1e-9);
        assertEquals(4152, bill.parts().demand(), 1e-9);
    }

    @Test
    void linesTellWhatSetTheirDemand() {
        Bill bill = Bill.of(ExampleTariffs.generalService(), 1, JULY_LOAD, PeakHistory.ofPeaks(2, 400, 60, 60, 60));
        assertEquals("60 % of 400.0 kW at 00:00 on billed day, March", bill.lines().get(4).demand().orElseThrow().explanation());
        assertEquals("200.0 kW at 17:15 on school day, July", bill.lines().get(5).demand().orElseThrow().explanation());
    }

    @Test
    void printedLinesAreCentsAndSumToTheTotal() {
        Bill bill = Bill.printed(ExampleTariffs.generalService(), 1, JULY_LOAD, PeakHistory.ofPeaks(2, 400, 60, 60, 60));
        assertEquals(195.58, bill.lines().get(6).amount(), 1e-12);
        assertEquals(7524.40, bill.total(), 1e-9);
    }

    @Test
    void demandIsPhasedInByContractYear() {
        assertEquals(0, demandOfYear(3), 0);
        assertEquals(2.6 * 200, demandOfYear(4), 1e-9);
        assertEquals(5.2 * 200, demandOfYear(9), 1e-9);
    }

    private static double demandOfYear(int contractYear) {
        return Bill.of(ExampleTariffs.fleetCharging(), contractYear, JULY_LOAD, PeakHistory.NONE).amount(BillComponent.DEMAND);
    }

    @Test
    void historyMustEndJustBeforeTheMonth() {
        PeakHistory untilMay = PeakHistory.ofPeaks(3, 10, 10);
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> Bill.of(ExampleTariffs.generalService(), 1, JULY_LOAD, untilMay));
        assertEquals("July comes after May but months must follow one another", refused.getMessage());
    }
}
