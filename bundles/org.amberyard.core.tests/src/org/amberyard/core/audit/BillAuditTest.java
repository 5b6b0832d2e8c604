package org.amberyard.core.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.amberyard.core.tariff.BillingPeriod;
import org.amberyard.core.tariff.ChargeRate;
import org.amberyard.core.tariff.ContractStart;
import org.amberyard.core.tariff.DatedLoad;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.EnergyCharge;
import org.amberyard.core.tariff.MeteredDay;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.Riders;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.tariff.TariffPeriod;
import org.amberyard.core.tariff.TariffPeriod.Hours;
import org.junit.jupiter.api.Test;

/**
 * Printed bills of 30 days at 10 kW, 7,200 kWh: by the tariff 20 + 720.00 at 0.10 + 50.00 for 10 kW at 5 = 790.00, and 5 % tax, 39.50; in all
 * 829.50, worked by hand. All bills are invented.
 */
class BillAuditTest {
    private static final BillingPeriod PERIOD = new BillingPeriod(LocalDate.of(2026, 1, 8), LocalDate.of(2026, 2, 6));
    private static final Tariff TARIFF = Tariff.flat("Flat", 20, 0.10, 0, 5, 0.05);

    private static DatedLoad load(BillingPeriod period) {
        double[] kw = new double[96];
        Arrays.fill(kw, 10);
        return new DatedLoad(period.dates().stream().map(d -> new MeteredDay(d, kw)).toList());
    }

    private static BillAudit audit(OptionalDouble kwh, OptionalDouble kw, PrintedLine... lines) {
        PrintedBill bill = new PrintedBill("January", PERIOD, kwh, kw, List.of(lines), OptionalDouble.empty());
        return new BillRecords(List.of(new BillRecord(0, bill, TARIFF, List.of(), ContractStart.longAgo(1))), load(PERIOD)).audits().get(0);
    }

    private static BillAudit ofTotal(double total, OptionalDouble kwh, OptionalDouble kw) {
        return audit(kwh, kw, new PrintedLine("All of it", total));
    }

    @Test
    void aBillIsWorkedOutLineByLine() {
        BillAudit audit = ofTotal(829.50, OptionalDouble.of(7200), OptionalDouble.of(10));
        assertEquals(7200, audit.meteredKwh(), 1e-9);
        assertEquals(10, audit.meteredKw(), 1e-12);
        assertEquals(0, audit.difference().orElseThrow(), 1e-9);
        assertEquals(AuditVerdict.AGREES, audit.verdict());
    }

    /** One per cent of 821.29 is 8.2129, of 821.28 is 8.2128; by the tariff it is 8.21 and 8.22 more. */
    @Test
    void onePerCentOfThePrintedBillIsTheLimit() {
        assertEquals(AuditVerdict.AGREES, ofTotal(821.29, OptionalDouble.empty(), OptionalDouble.empty()).verdict());
        BillAudit beyond = ofTotal(821.28, OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(AuditVerdict.TARIFF, beyond.verdict());
        assertEquals(8.22, beyond.difference().orElseThrow(), 1e-9);
        assertEquals(0.0100088, beyond.differenceShare().orElseThrow(), 1e-7);
    }

    /** Data come before the tariff: 7,200 kWh against 7,500 printed, 10 kW against 12. */
    @Test
    void anotherEnergyOrDemandIsAMatterOfTheData() {
        BillAudit energy = ofTotal(900, OptionalDouble.of(7500), OptionalDouble.of(10));
        assertEquals(AuditVerdict.DATA, energy.verdict());
        assertTrue(energy.energyDiffers());
        assertFalse(energy.demandDiffers());
        BillAudit demand = ofTotal(900, OptionalDouble.of(7200), OptionalDouble.of(12));
        assertEquals(AuditVerdict.DATA, demand.verdict());
        assertTrue(demand.demandDiffers());
        assertEquals(AuditVerdict.TARIFF, ofTotal(900, OptionalDouble.of(7200), OptionalDouble.of(10)).verdict());
    }

    @Test
    void nothingIsWorkedOutWhereDaysAreMissing() {
        PrintedBill bill = new PrintedBill("January", PERIOD, OptionalDouble.of(7200), OptionalDouble.empty(), List.of(), OptionalDouble.of(829.5));
        DatedLoad most = load(new BillingPeriod(PERIOD.first().plusDays(2), PERIOD.last()));
        BillAudit audit = new BillRecords(List.of(new BillRecord(0, bill, TARIFF, List.of(), ContractStart.longAgo(1))), most).audits().get(0);
        assertEquals(AuditVerdict.NOT_COVERED, audit.verdict());
        assertEquals("2026-01-08, 2026-01-09", audit.missingWords());
        assertTrue(audit.difference().isEmpty());
        assertFalse(audit.energyDiffers());
        assertEquals(List.of(), audit.lines());
        BillAudit none = new BillRecords(List.of(new BillRecord(0, bill, TARIFF, List.of(), ContractStart.longAgo(1))), DatedLoad.NONE).audits().get(0);
        assertEquals("2026-01-08, 2026-01-09, 2026-01-10, 2026-01-11, 2026-01-12, 2026-01-13 and 24 more, the last 2026-02-06", none.missingWords());
    }

    private static List<String> pairs(BillAudit audit) {
        return audit.lines().stream().map(l -> l.printedName() + " ~ " + l.computedName()).toList();
    }

    /** By the words, then by the amount, then by the kind; a fee that the tariff has not stands alone, and so does what the bill leaves out. */
    @Test
    void linesFindEachOther() {
        BillAudit audit = audit(OptionalDouble.empty(), OptionalDouble.empty(), new PrintedLine("Demand charge", 50), new PrintedLine("Basic service", 20),
                new PrintedLine("Electricity usage 7,200 kWh", 720), new PrintedLine("Meter reading fee", 4.5));
        assertEquals(List.of("Demand charge ~ Demand", "Basic service ~ Customer charge", "Electricity usage 7,200 kWh ~ Energy",
                "Meter reading fee ~ ", " ~ Taxes"), pairs(audit));
        assertEquals(39.5 + 20 - 20 - 4.5, audit.lines().stream().mapToDouble(AuditLine::difference).sum(), 1e-9);
    }

    @Test
    void aLineAloneOfItsKindTakesTheKind() {
        BillAudit audit = audit(OptionalDouble.empty(), OptionalDouble.empty(), new PrintedLine("Basic service", 20), new PrintedLine("City tax", 39.5));
        assertEquals(List.of("Basic service ~ Customer charge", "City tax ~ Taxes", " ~ Energy", " ~ Demand"), pairs(audit));
    }

    /** A bill from 17 January to 15 February at 10 kW, by a tariff whose energy is 0.10 in January, 0.20 from February; 3,600 kWh each. */
    private static List<String> parted(PrintedLine... lines) {
        BillingPeriod period = new BillingPeriod(LocalDate.of(2026, 1, 17), LocalDate.of(2026, 2, 15));
        Tariff tariff = new Tariff("Two prices", List.of(), MinimumBill.NONE, List.of(new EnergyCharge("Energy charge",
                List.of(in(Set.of(0), 0.10), in(Set.of(1), 0.20)))), List.of(), Riders.NONE, List.of(), 1);
        PrintedBill bill = new PrintedBill("Parted", period, OptionalDouble.empty(), OptionalDouble.empty(), List.of(lines), OptionalDouble.empty());
        BillAudit audit = new BillRecords(List.of(new BillRecord(0, bill, tariff, List.of(), ContractStart.longAgo(1))), load(period)).audits().get(0);
        return audit.lines().stream().map(l -> l.printedName() + " ~ " + l.computedName() + " = " + Math.round(100 * l.difference())).toList();
    }

    private static ChargeRate in(Set<Integer> months, double price) {
        return ChargeRate.of(new TariffPeriod(months, EnumSet.allOf(DayClass.class), List.of(Hours.ALL_DAY)), price);
    }

    /** 15 days of 240 kWh at 0.10 and 15 at 0.20: 360 and 720, together 1,080. */
    @Test
    void aLineStandsBesideAllPartsOfItsCharge() {
        assertEquals(List.of("Energy charge ~ Energy charge, 2026-01-17 to 2026-01-31 + Energy charge, 2026-02-01 to 2026-02-15 = 0"),
                parted(new PrintedLine("Energy charge", 1080)));
        assertEquals(List.of("Energy ~ Energy charge, 2026-01-17 to 2026-01-31 + Energy charge, 2026-02-01 to 2026-02-15 = -20"),
                parted(new PrintedLine("Energy", 1080.2)));
    }

    @Test
    void aLineThatIsPartedTooIsPairedPartByPart() {
        assertEquals(List.of("Energy charge 0.10 ~ Energy charge, 2026-01-17 to 2026-01-31 = 0",
                "Energy charge 0.20 ~ Energy charge, 2026-02-01 to 2026-02-15 = -100"),
                parted(new PrintedLine("Energy charge 0.10", 360), new PrintedLine("Energy charge 0.20", 721)));
    }
}
