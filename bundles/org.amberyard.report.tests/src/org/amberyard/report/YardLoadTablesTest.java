package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.yard.YardYear;
import org.amberyard.testsupport.SampleDistrict;
import org.amberyard.testsupport.SampleYards;
import org.junit.jupiter.api.Test;

class YardLoadTablesTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());
    private final StudyResult rest = SampleDistrict.evaluated(SampleYards.portsOnly(SampleDistrict.small(), false));

    private static ResultTable table(StudyResult of, String name) {
        return ResultTables.of(of, UnitSystem.US).stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    private static double sum(ResultTable table, String column) {
        return IntStream.range(0, table.rows().size()).mapToDouble(r -> (Double) table.cell(r, column)).sum();
    }

    /** A port at rest draws 20 W, from 2029 on two of them 40 W. */
    @Test
    void portsAtRestDrawTheSameAllYear() {
        ResultTable months = table(rest, "yard_by_month");
        assertEquals(10 * 12, months.rows().size());
        assertEquals(List.of("Electric in stages", 2026, "January"), months.rows().get(0).subList(0, 3));
        assertEquals(744 * 0.02, (Double) months.cell(0, "energy"), 1e-9);
        assertEquals(744 * 0.04, (Double) months.cell(36, "energy"), 1e-9);
        assertEquals(0.02, (Double) months.cell(0, "charging_peak"), 1e-12);
        assertEquals(60.02, (Double) months.cell(0, "service_peak"), 1e-9);
        assertEquals("none", months.cell(0, "shortfalls"));
        ResultTable shape = table(rest, "load_shape");
        assertEquals(48, shape.rows().size());
        assertEquals(List.of("Electric in stages", 2035, "January", "coldest day", "00:00"), shape.rows().get(0).subList(0, 5));
        assertEquals("normal day", shape.cell(24, "day"));
        for (int row = 0; row < 48; row++) {
            assertEquals(0.04, (Double) shape.cell(row, "charging_mean"), 1e-12);
            assertEquals(60.04, (Double) shape.cell(row, "service_highest"), 1e-9);
        }
        assertEquals(0, table(rest, "charge_plan").rows().size());
        assertEquals(0, table(rest, "port_curve").rows().size());
    }

    @Test
    void monthsSumUpToTheYear() {
        ResultTable months = table(result, "yard_by_month");
        double years = result.plans().get(1).yards().stream().mapToDouble(YardYear::yardKwh).sum();
        assertEquals(years, sum(months, "energy"), 1e-6);
    }

    @Test
    void theHighestLoadOfTheYearStandsInTheShape() {
        ResultTable shape = table(result, "load_shape");
        YardYear last = result.plans().get(1).yards().get(9);
        double highest = IntStream.range(0, shape.rows().size()).mapToDouble(r -> (Double) shape.cell(r, "charging_highest")).max()
                .orElseThrow();
        assertEquals(last.yardPeakKw(), highest, 1e-9);
        for (int row = 0; row < shape.rows().size(); row++) {
            assertTrue((Double) shape.cell(row, "charging_mean") <= (Double) shape.cell(row, "charging_highest") + 1e-12);
            assertEquals(60, (Double) shape.cell(row, "service_mean") - (Double) shape.cell(row, "charging_mean"), 1e-9);
        }
    }

    @Test
    void theCardOfTheWallHasEveryBusAndNoPlugTwice() {
        ResultTable card = table(result, "charge_plan");
        Set<Object> buses = new HashSet<>();
        for (int row = 0; row < card.rows().size(); row++) {
            buses.add(card.cell(row, "bus"));
            assertTrue(card.cell(row, "port").toString().matches("[12], AC 19.2 kW"));
            assertEquals("1", card.cell(row, "plug"));
            boolean night = card.cell(row, "departure").toString().endsWith("next day");
            assertTrue(night ? Math.abs((Double) card.cell(row, "ready") - 100) < 1e-6 : (Double) card.cell(row, "ready") < 100,
                    "full in the morning, at midday as much as the day takes: " + card.rows().get(row));
            assertEquals(0, (Double) card.cell(row, "missing"), 0);
            assertTrue(card.cell(row, "charges").toString().startsWith(card.cell(row, "from") + " to "),
                    "spread charging begins when it is plugged in: " + card.rows().get(row));
        }
        assertEquals(result.plans().get(1).yards().get(9).input().buses().size(), buses.size());
    }

    @Test
    void policiesAndTariffsStandBesideEachOther() {
        ResultTable policies = table(result, "policies");
        assertEquals(List.of("at once", "at a set time", "spread to departure", "least cost", "least cost day by day"),
                policies.rows().stream().map(r -> r.get(policies.column("policy"))).toList());
        assertEquals(List.of("no", "no", "yes", "no", "no"), policies.rows().stream().map(r -> r.get(policies.column("in_use"))).toList());
        YardYear last = result.plans().get(1).yards().get(9);
        assertEquals(last.parts().total(), (Double) policies.cell(2, "total"), 1e-9);
        assertEquals(last.yardPeakKw(), (Double) policies.cell(2, "charging_peak"), 1e-12);
        assertEquals(0, policies.cell(2, "buses_short"));
        assertTrue((Double) policies.cell(3, "total") <= (Double) policies.cell(0, "total") + 1e-6);
        assertEquals(0, (Double) policies.cell(3, "above_least_cost"), 0);
        for (int row = 0; row < 5; row++) {
            assertTrue((Double) policies.cell(row, "above_least_cost") >= -1e-6, "nothing beats foresight");
            assertEquals((Double) policies.cell(row, "total") - (Double) policies.cell(3, "total"),
                    (Double) policies.cell(row, "above_least_cost"), 1e-9);
            assertEquals((Double) policies.cell(row, "energy") + (Double) policies.cell(row, "demand")
                    + (Double) policies.cell(row, "fixed"), (Double) policies.cell(row, "total"), 1e-9);
        }
        ResultTable tariffs = table(result, "tariffs");
        assertEquals(1, tariffs.rows().size());
        assertEquals(List.of("Electric in stages", 2035, "Flat", "yes", "no", 1), tariffs.rows().get(0).subList(0, 6));
        assertEquals((Double) policies.cell(2, "total"), (Double) tariffs.cell(0, "total"), 1e-9);
    }

    /** Each year with ports or electric buses under each policy; the last year as in the table of policies. */
    @Test
    void policiesStandBesideEachOtherInEveryYear() {
        ResultTable years = table(result, "policies_by_year");
        ResultTable last = table(result, "policies");
        assertEquals(10 * 5, years.rows().size());
        assertEquals(last.rows(), years.rows().subList(9 * 5, 10 * 5));
        for (int year = 0; year < 10; year++) {
            assertEquals(2026 + year, years.cell(5 * year, "year"));
            assertEquals(result.plans().get(1).yards().get(year).parts().total(), (Double) years.cell(5 * year + 2, "total"), 1e-9);
        }
        assertEquals(years.columns().stream().map(ResultColumn::name).toList(),
                last.columns().stream().map(ResultColumn::name).toList());
    }

    /** Hardware of 6,200 over 10 years and installation of 9,000 over 30 at 3 %, and a fee of 240. */
    @Test
    void aPortCostsItsCapitalRecoveryAndItsFee() {
        ResultTable curve = table(result, "port_curve");
        double perPort = 6200 * 0.1172305 + 9000 * 0.0510193 + 240;
        Map<Object, Double> lowest = new HashMap<>();
        for (int row = 0; row < curve.rows().size(); row++) {
            assertEquals((Integer) curve.cell(row, "ports") * perPort, (Double) curve.cell(row, "port_cost"), 0.02);
            assertTrue(((String) curve.cell(row, "mix")).startsWith(curve.cell(row, "ports") + " × AC 19.2 kW"));
            double cost = (Double) curve.cell(row, "cost");
            assertEquals((Double) curve.cell(row, "port_cost") + (Double) curve.cell(row, "swap_cost")
                    + (Double) curve.cell(row, "bill"), cost, 1e-9);
            if (curve.cell(row, "ready").equals("yes")) {
                lowest.merge(curve.cell(row, "policy"), cost, Math::min);
            }
        }
        assertEquals(4, lowest.size(), "by each policy that a yard is planned with");
        for (int row = 0; row < curve.rows().size(); row++) {
            boolean cheapest = curve.cell(row, "ready").equals("yes")
                    && lowest.get(curve.cell(row, "policy")).equals(curve.cell(row, "cost"));
            assertEquals(cheapest ? "yes" : "no", curve.cell(row, "cheapest"));
        }
    }

    /** The plan ends with two ports, and what they cost with the bill of the last year stands in the table of policies. */
    @Test
    void thePortsOfThePlanAreMarked() {
        ResultTable curve = table(result, "port_curve");
        ResultTable policies = table(result, "policies");
        List<Integer> bought = IntStream.range(0, curve.rows().size()).filter(r -> curve.cell(r, "bought").equals("yes")).boxed()
                .toList();
        assertEquals(4, bought.size());
        for (int policy = 0; policy < 4; policy++) {
            int row = bought.get(policy);
            assertEquals(2, curve.cell(row, "ports"));
            assertEquals(policies.cell(policy, "policy"), curve.cell(row, "policy"));
            assertEquals((Double) policies.cell(policy, "total"), (Double) curve.cell(row, "bill"), 1e-9);
        }
    }

    @Test
    void theLoadLetterHasTheFigures() {
        ResultTable letter = table(rest, "load_letter");
        for (List<String> row : List.of(List.of("Customer and site", "Sample district", ""),
                List.of("Service voltage, three phases", "480", "V"),
                List.of("Existing peak demand", "60.0", "kW"), List.of("Power factor at the peak", "0.95", ""),
                List.of("Requested in service, 2029", "1 × 19.2 kW alternating current (AC 19.2 kW)", "ports"),
                List.of("Ports in 2035", "2 × 19.2 kW alternating current (AC 19.2 kW)", "ports"),
                List.of("Connected load of ports, 2035", "38.4", "kW"),
                List.of("All ports at full power, a continuous load, and the building's measured demand, both at 125 %, 2035", "129.5",
                        "kVA"),
                List.of("Ramp, 2026: connected load of ports", "19.2", "kW"),
                List.of("Ramp, 2029: load with the building as planned", "63.2", "kVA"),
                List.of("First year above the transformer, all ports at full power", "in no year studied", ""))) {
            assertTrue(letter.rows().stream().anyMatch(r -> r.subList(1, 4).equals(row)), row + " in " + letter.rows());
        }
        assertTrue(letter.rows().stream().noneMatch(r -> r.get(1).toString().startsWith("Ramp, 2030")), "nothing changes in 2030");
        assertTrue(letter.rows().stream().anyMatch(r -> r.get(2).toString().contains("licensed electrician decide")));
    }
}
