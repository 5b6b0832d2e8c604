package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.audit.BillRecord;
import org.amberyard.core.audit.BillRecords;
import org.amberyard.core.audit.PrintedBill;
import org.amberyard.core.audit.PrintedLine;
import org.amberyard.core.plan.DepotInput;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.tariff.BillingPeriod;
import org.amberyard.core.tariff.ContractStart;
import org.amberyard.core.tariff.DatedLoad;
import org.amberyard.core.tariff.MeteredDay;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.why.Derivation;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

/** An invented bill of 30 days at 10 kW: 20 + 720.00 + 50.00 = 790.00 by the tariff, 800.00 as printed; and one of days that nobody metered. */
class AuditTablesTest {
    private static final BillingPeriod PERIOD = new BillingPeriod(LocalDate.of(2026, 1, 8), LocalDate.of(2026, 2, 6));
    private final StudyResult result = SampleDistrict.evaluated(billed(SampleDistrict.small()));
    private final ResultTable bills = table("bill_audit");
    private final ResultTable lines = table("bill_audit_lines");

    private ResultTable table(String name) {
        return ResultTables.of(ResultTables.place(name), result, UnitSystem.US, p -> {});
    }

    private static StudyInput billed(StudyInput s) {
        Tariff tariff = Tariff.flat("General", 20, 0.10, 0, 5, 0);
        PrintedBill printed = new PrintedBill("January", PERIOD, OptionalDouble.of(7200), OptionalDouble.empty(), List.of(
                new PrintedLine("Energy", 725), new PrintedLine("Demand", 50), new PrintedLine("Meter fee", 25)), OptionalDouble.empty());
        PrintedBill later = new PrintedBill("March", new BillingPeriod(LocalDate.of(2026, 3, 1), LocalDate.of(2026, 3, 31)), OptionalDouble.empty(),
                OptionalDouble.empty(), List.of(), OptionalDouble.of(700));
        double[] kw = new double[24];
        Arrays.fill(kw, 10);
        BillRecords records = new BillRecords(
                List.of(new BillRecord(0, printed, tariff, List.of(), ContractStart.longAgo(1)),
                        new BillRecord(0, later, tariff, List.of(), ContractStart.longAgo(1))),
                new DatedLoad(PERIOD.dates().stream().map(d -> new MeteredDay(d, kw)).toList()));
        DepotInput d = s.depot();
        return new StudyInput(s.name(), s.currency(), s.baseYear(), s.years(), s.money(), s.duty(), s.types(), s.buses(),
                new DepotInput(d.ports(), d.works(), d.service(), d.window(), d.metering(), d.alternatives(), d.charging(), records), s.prices(),
                s.funding(), s.air(), s.rules(), s.plans(), s.baseline(), s.trips(), s.actuals());
    }

    @Test
    void printedAndComputedStandBesideEachOther() {
        assertEquals(List.of("January", "2026-01-08 to 2026-02-06", "General", "differs; look at the tariff", 800.0, 790.0, -10.0, -1.25, 7200.0, 7200.0),
                bills.rows().get(0).subList(0, 10));
        assertNull(bills.cell(0, "remark"));
    }

    @Test
    void daysThatNobodyMeteredAreNamed() {
        assertEquals("not worked out: days are missing", bills.cell(1, "verdict"));
        assertNull(bills.cell(1, "computed"));
        assertEquals("The meter’s data lack 2026-03-01, 2026-03-02, 2026-03-03, 2026-03-04, 2026-03-05, 2026-03-06 and 25 more, the last 2026-03-31.",
                bills.cell(1, "remark"));
    }

    @Test
    void linesOfOneBillAloneSaySo() {
        assertEquals(List.of(
                Arrays.asList("January", "Energy", "Energy", "both", 725.0, 720.0, -5.0, "7,200.0 kWh at 0.10"),
                Arrays.asList("January", "Demand", "Demand", "both", 50.0, 50.0, 0.0, "10.0 kW at 5.00, 10.0 kW at 00:00 on 2026-01-08, January"),
                Arrays.asList("January", "Meter fee", "Customer charge", "both", 25.0, 20.0, -5.0, "1 month at 20.00")), lines.rows());
    }

    @Test
    void theComputedBillIsDerivedFromQuantityAndPrice() {
        Derivation why =
                ResultTables.why(ResultTables.place("bill_audit"), result, 0, bills.columns().stream().map(ResultColumn::name).toList().indexOf("computed"));
        assertEquals(790, why.value(), 1e-9);
        assertEquals(List.of("Customer charge", "Energy", "Demand"), why.parts().stream().map(Derivation::name).toList());
        assertEquals(7200, why.parts().get(1).parts().get(0).value(), 1e-9);
    }
}
