package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.plan.ChargingRules;
import org.amberyard.core.plan.DepotInput;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.yard.Metering;
import org.amberyard.core.yard.YardDetail;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

/** The small district charged under a cap of 15 kW, at once and so on, on four invented tariffs. */
class PartTablesTest {
    private static final double CAP_KW = 15;
    private static final List<String> PARTS = List.of("customer", "energy", "demand", "rider", "minimum", "tax");
    private final StudyResult result = SampleDistrict.evaluated(study());
    private final int electric = result.plans().size() - 1;

    private static StudyInput study() {
        StudyInput s = SampleDistrict.small();
        ChargingRules old = s.depot().charging();
        ChargingRules capped = new ChargingRules(new ChargeRule(ChargePolicy.AT_ONCE, 1320, 1320, CAP_KW), old.stepMin(), old.building(), old.swaps(),
                old.swapCost(), old.battery());
        DepotInput d = s.depot();
        List<Metering> others = List.of(Metering.own(Tariff.flat("B", 50, 0.2, 0, 0, 0)), Metering.own(Tariff.flat("C", 20, 0.1, 0.01, 20, 0.05)),
                Metering.own(Tariff.flat("D", 0, 0.3, 0, 1, 0)));
        return new StudyInput(s.name(), s.currency(), s.baseYear(), s.years(), s.money(), s.duty(), s.types(), s.buses(),
                new DepotInput(d.ports(), d.works(), d.service(), d.window(), d.metering(), others, capped), s.prices(), s.funding(), s.air(), s.rules(),
                s.plans(), s.baseline(), s.trips());
    }

    private ResultTable table(String name) {
        return ResultTables.of(ResultTables.place(name), result, UnitSystem.US, p -> {});
    }

    private static void partsSumUp(ResultTable table) {
        for (int row = 0; row < table.rows().size(); row++) {
            int of = row;
            assertEquals((Double) table.cell(row, "total"), PARTS.stream().mapToDouble(p -> (Double) table.cell(of, p)).sum(), 1e-6);
        }
    }

    @Test
    void everyPolicyHasARowWithItsParts() {
        ResultTable policies = table("policy_bills");
        assertEquals(List.of("at once", "at a set time", "spread to departure", "capped", "least cost", "least cost day by day"),
                policies.rows().stream().map(r -> r.get(2)).toList());
        assertEquals(List.of("yes", "no", "no", "no", "no", "no"), policies.rows().stream().map(r -> r.get(3)).toList());
        partsSumUp(policies);
        assertTrue((Double) policies.cell(0, "charging_peak") > CAP_KW + 1, "at once buses draw more than the cap");
        assertNull(policies.cell(0, "missed"));
    }

    /** The cap holds the charge of the packs at every step of every month; heat on the plug and standby come on top. */
    @Test
    void theCapIsKept() {
        YardDetail capped = YardDetail.of(result.plans().get(electric).yardComparison().last(ChargePolicy.CAPPED, 0));
        double peakKw = capped.loads().stream().flatMap(m -> m.stretches().stream()).flatMapToDouble(s -> Arrays.stream(s.schedule().totalKw()))
                .max().orElseThrow();
        assertEquals(CAP_KW, peakKw, 1e-9);
        assertTrue((Double) table("policy_bills").cell(3, "charging_peak") >= CAP_KW);
    }

    @Test
    void fourTariffsStandBesideEachOther() {
        ResultTable tariffs = table("tariff_bills");
        assertEquals(List.of("Flat", "B", "C", "D"), tariffs.rows().stream().map(r -> r.get(2)).toList());
        partsSumUp(tariffs);
        assertEquals(12 * 50.0, (Double) tariffs.cell(1, "customer"), 1e-9);
        assertEquals(0.2 * (Double) tariffs.cell(1, "kwh"), (Double) tariffs.cell(1, "energy"), 1e-6);
        assertEquals(0, (Double) tariffs.cell(1, "demand"), 1e-9);
    }

    /** Lines in whole cents and their sum, which is the month's bill under that policy on that tariff. */
    @Test
    void anyPolicyOnAnyTariffHasItsBill() {
        ResultTable bill = new ChosenBill(electric, ChargePolicy.CAPPED, 2, 0).table(result);
        assertEquals(List.of("Customer charge", "Energy", "Demand", "Riders", "Taxes", "Bill of January"), bill.rows().stream().map(r -> r.get(0)).toList());
        double sum = IntStream.range(0, 5).mapToDouble(r -> amount(bill, r)).sum();
        assertEquals(sum, amount(bill, 5), 1e-9);
        assertEquals("20.00", bill.cell(2, "price"));
        assertEquals("0.01", bill.cell(3, "price"));
        assertEquals("1", bill.cell(0, "quantity"));
        assertTrue(((String) bill.cell(2, "explanation")).contains("drawing then"), () -> String.valueOf(bill.cell(2, "explanation")));
    }

    private static double amount(ResultTable bill, int row) {
        return Double.parseDouble(((String) bill.cell(row, "amount")).replace(",", ""));
    }
}
