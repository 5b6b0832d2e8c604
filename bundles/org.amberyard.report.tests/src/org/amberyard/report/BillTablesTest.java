package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.yard.YardDetail;
import org.amberyard.testsupport.SampleDistrict;
import org.amberyard.testsupport.SampleYards;
import org.junit.jupiter.api.Test;

class BillTablesTest {
    private static final Pattern DRAW = Pattern.compile("(\\d+\\.\\d) kW(?=,|$| \\()");
    private final StudyResult result = SampleDistrict.evaluated(SampleYards.atOnceOnPaths(SampleDistrict.small()));

    private static ResultTable table(StudyResult of, String name) {
        return ResultTables.of(of, UnitSystem.US).stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    private static StudyResult portsOnly(boolean shared) {
        return SampleDistrict.evaluated(SampleYards.portsOnly(SampleDistrict.small(), shared));
    }

    private static List<Object> amounts(ResultTable lines, String month, String bill) {
        return lines.rows().stream().filter(r -> r.get(2).equals(month) && r.get(3).equals(bill))
                .map(r -> r.get(lines.column("amount"))).toList();
    }

    /** Two ports of 20 W at rest through the 744 h of January: 29.76 kWh and 0.04 kW. */
    @Test
    void portsAtRestAreBilledToTheCent() {
        ResultTable lines = table(portsOnly(false), "bill_lines");
        assertEquals(List.of(120.0, 3.27, 0.38, 0.30, 3.72), amounts(lines, "January", "as metered"));
        assertEquals(List.of("Electric in stages", 2035, "January", "as metered", "Flat", "energy charge", "Energy"),
                lines.rows().get(1).subList(0, 7));
        assertEquals(29.76, (Double) lines.cell(1, "quantity"), 1e-9);
        assertEquals("kWh", lines.cell(1, "unit"));
        assertEquals(0.11, (Double) lines.cell(1, "price"), 1e-12);
        assertNull(lines.cell(1, "explanation"));
        assertEquals("kW", lines.cell(2, "unit"));
        assertEquals("0.0 kW at 00:00 on normal day, January; drawing then: ports at rest 0.0 kW", lines.cell(2, "explanation"));
        ResultTable months = table(portsOnly(false), "bill_by_month");
        assertEquals(12, months.rows().size());
        assertEquals(127.67, (Double) months.cell(0, "total"), 1e-9);
        assertNull(months.cell(0, "without_charging"));
        assertEquals(127.67, (Double) months.cell(0, "of_charging"), 1e-9);
    }

    /** A building of 60 kW takes 44,640 kWh in January. */
    @Test
    void aSharedMeterShowsTheBillWithoutChargingAndTheDifference() {
        StudyResult shared = portsOnly(true);
        ResultTable lines = table(shared, "bill_lines");
        assertEquals(List.of(120.0, 4913.67, 570.38, 446.70, 181.52), amounts(lines, "January", "as metered"));
        assertEquals(List.of(120.0, 4910.40, 570.0, 446.40, 181.40), amounts(lines, "January", "without charging"));
        ResultTable months = table(shared, "bill_by_month");
        assertEquals(6232.27, (Double) months.cell(0, "total"), 1e-9);
        assertEquals(6228.20, (Double) months.cell(0, "without_charging"), 1e-9);
        assertEquals(4.07, (Double) months.cell(0, "of_charging"), 1e-9);
    }

    @Test
    void theTextIsTheBillLineByLine() {
        StudyResult shared = portsOnly(true);
        String text = BillText.of(shared.input(), "plan", YardDetail.of(shared.plans().get(1).yards().get(9).input()), 0);
        List<String> lines = text.lines().map(String::strip).toList();
        assertEquals("Electric bill for January, tariff Flat as in year 1 of its contract", lines.get(1));
        assertEquals("Charging spread to departure, on the building's meter; base-date prices in USD", lines.get(2));
        for (String line : List.of("Customer charge 1 month at 120.00 120.00", "Energy 44,669.8 kWh at 0.11 4,913.67",
                "Demand 60.0 kW at 9.50 570.38", "Taxes 3 % of 6,050.75 181.52", "Total 6,232.27",
                "Without charging 6,228.20", "Charging adds 4.07")) {
            assertTrue(lines.stream().anyMatch(l -> l.replaceAll(" +", " ").equals(line)), line + " in\n" + text);
        }
        assertTrue(text.replaceAll("\\s+", " ").contains("drawing then: ports at rest 0.0 kW, building 60.0 kW"), text);
    }

    @Test
    void printedLinesSumUpToThePrintedBill() {
        ResultTable lines = table(result, "bill_lines");
        ResultTable months = table(result, "bill_by_month");
        for (int row = 0; row < months.rows().size(); row++) {
            List<Object> amounts = amounts(lines, (String) months.cell(row, "month"), "as metered");
            assertEquals((Double) months.cell(row, "total"), amounts.stream().mapToDouble(a -> (Double) a).sum(), 1e-9);
        }
    }

    @Test
    void theBusesNamedDrawTheDemand() {
        ResultTable lines = table(result, "bill_lines");
        int demands = 0;
        for (int row = 0; row < lines.rows().size(); row++) {
            if (lines.cell(row, "component").equals("demand charge")) {
                String why = (String) lines.cell(row, "explanation");
                String[] parts = why.split("; drawing then: ");
                double drawn = DRAW.matcher(parts[1]).results().map(MatchResult::group).map(w -> w.split(" ")[0])
                        .mapToDouble(Double::parseDouble).sum();
                assertEquals((Double) lines.cell(row, "quantity"), drawn, 0.05 * parts[1].split(",").length, why);
                assertTrue(parts[0].matches("\\d+\\.\\d kW at \\d\\d:\\d\\d on .*"), why);
                demands++;
            }
        }
        assertEquals(12, demands);
        assertTrue(lines.cell(2, "explanation").toString().contains("B0"), "a bus by its name");
    }

    @Test
    void yearsOfBillsAreThoseOfTheLedger() {
        ResultTable years = table(result, "bill_by_year");
        CostLedger ledger = result.plans().get(1).ledger();
        assertEquals(10, years.rows().size(), "the plan without ports has no bill");
        for (int row = 0; row < 10; row++) {
            assertEquals(2026 + row, years.cell(row, "year"));
            assertEquals(ledger.amount(row, CostCategory.ELECTRIC_ENERGY), (Double) years.cell(row, "energy_paid"), 1e-6);
            assertEquals(ledger.amount(row, CostCategory.ELECTRIC_DEMAND), (Double) years.cell(row, "demand_paid"), 1e-6);
            assertEquals(ledger.amount(row, CostCategory.ELECTRIC_FIXED), (Double) years.cell(row, "fixed_paid"), 1e-6);
            assertEquals((Double) years.cell(row, "total") / (Double) years.cell(row, "kwh"), (Double) years.cell(row, "price"),
                    1e-12);
            assertEquals(Math.pow(1.05, row + 1), (Double) years.cell(row, "demand_paid") / (Double) years.cell(row, "demand"),
                    1e-9);
        }
    }
}
