package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

class ResultTablesTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());

    private ResultTable table(String name, UnitSystem system) {
        return ResultTables.of(result, system).stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    private static double sum(ResultTable table, String column, String plan) {
        int at = table.column(column);
        return table.rows().stream().filter(r -> r.get(0).equals(plan)).mapToDouble(r -> (Double) r.get(at)).sum();
    }

    private static double ledgerSum(CostLedger ledger) {
        double sum = 0;
        for (int year = 0; year < ledger.years(); year++) {
            sum += ledger.yearTotal(year);
        }
        return sum;
    }

    @Test
    void everyTableOfCostsAddsUpToTheLedger() {
        for (PlanResult plan : result.plans()) {
            double expected = ledgerSum(plan.ledger());
            assertEquals(expected, sum(table("cost_by_year", UnitSystem.US), "amount", plan.name()), 1e-6);
            assertEquals(expected, sum(table("cost_by_bus", UnitSystem.US), "amount", plan.name()), 1e-6);
            assertEquals(expected, sum(table("cash_by_year", UnitSystem.US), "cost", plan.name()), 1e-6);
        }
    }

    @Test
    void cashIsTheSumOfItsColumnsAndHoldsNothingThatOnlyIsLeft() {
        ResultTable cash = table("cash_by_year", UnitSystem.US);
        for (int row = 0; row < cash.rows().size(); row++) {
            double sum = 0;
            for (String column : List.of("capital", "funding", "energy", "upkeep", "bus_sales")) {
                sum += (Double) cash.cell(row, column);
            }
            assertEquals(sum, (Double) cash.cell(row, "cash"), 1e-6);
        }
        assertTrue(sum(cash, "value_left", "Electric in stages") < 0);
    }

    @Test
    void yearsAreCalendarNumbers() {
        ResultTable cash = table("cash_by_year", UnitSystem.US);
        assertEquals(2026, cash.cell(0, "year"));
        assertEquals(2035, cash.cell(9, "year"));
    }

    @Test
    void figuresAreInTheUnitsOfTheUser() {
        VehicleYear first = result.plans().get(0).fleet().years().get(0);
        ResultTable us = table("vehicle_years", UnitSystem.US);
        ResultTable metric = table("vehicle_years", UnitSystem.METRIC);
        assertEquals(first.use().km(), (Double) metric.cell(0, "distance"), 1e-9);
        assertEquals(first.use().km() / 1.609344, (Double) us.cell(0, "distance"), 1e-9);
        double mpg = first.use().km() / 1.609344 / (first.use().fuelL() / 3.785411784);
        assertEquals(mpg, (Double) us.cell(0, "fuel_economy"), 1e-9);
        assertEquals(100 * first.use().fuelL() / first.use().km(), (Double) metric.cell(0, "fuel_economy"), 1e-9);
    }

    @Test
    void whatDoesNotExistIsMissingAndNotZero() {
        ResultTable vehicles = table("vehicle_years", UnitSystem.US);
        for (int row = 0; row < vehicles.rows().size(); row++) {
            boolean diesel = "Diesel C".equals(vehicles.cell(row, "type"));
            assertEquals(diesel, vehicles.cell(row, "meter_energy") == null);
            assertEquals(diesel, vehicles.cell(row, "health") == null);
            assertEquals(!diesel, vehicles.cell(row, "fuel") == null);
        }
        ResultTable headline = table("headline", UnitSystem.US);
        assertNull(headline.cell(0, "present_saving"));
        assertNull(headline.cell(0, "simple_payback"));
        assertEquals("never", headline.cell(1, "simple_payback"));
        assertNull(headline.cell(1, "simple_payback_years"));
    }

    @Test
    void headlineRepeatsTheMeasures() {
        ResultTable headline = table("headline", UnitSystem.METRIC);
        for (int plan = 0; plan < 2; plan++) {
            assertEquals(result.plans().get(plan).measures().presentCost(), headline.cell(plan, "present_cost"));
            assertEquals(result.plans().get(plan).measures().co2eKg() / 1000,
                    (Double) headline.cell(plan, "greenhouse_gas"), 1e-9);
        }
        assertEquals(result.comparisons().get(0).presentSaving(), headline.cell(1, "present_saving"));
    }

    @Test
    void eventsSayWhyABusIsBought() {
        ResultTable events = table("fleet_events", UnitSystem.US);
        List<Object> causes = events.rows().stream().filter(r -> "bought".equals(r.get(events.column("event"))))
                .map(r -> r.get(events.column("cause"))).distinct().toList();
        assertTrue(causes.contains("step of the plan") && causes.contains("rule of its type"), causes.toString());
    }

    @Test
    void energyPurposesAddUpToTheNetEnergy() {
        ResultTable energy = table("route_energy", UnitSystem.METRIC);
        for (int row = 0; row < energy.rows().size(); row++) {
            if (energy.cell(row, "energy_per_distance") != null) {
                double sum = 0;
                for (String part : List.of("rolling", "drag", "climbing", "friction_brakes", "driveline", "pack_loss",
                        "auxiliary", "heat", "cooling", "pack_heat", "unsplit")) {
                    sum += (Double) energy.cell(row, part);
                }
                assertEquals(sum, (Double) energy.cell(row, "drawn") - (Double) energy.cell(row, "recovered"), 1e-6);
                double net = (Double) energy.cell(row, "energy_per_distance") * (Double) energy.cell(row, "distance");
                assertEquals(net, sum, 1e-6);
            }
        }
    }

    @Test
    void everyNumberHasAUnitEveryColumnAMeaningAndNamesAreUnique() {
        for (ResultTable table : ResultTables.of(result, UnitSystem.US)) {
            HashSet<String> names = new HashSet<>();
            for (ResultColumn column : table.columns()) {
                assertEquals(column.type() == ResultColumn.Type.TEXT, column.unit().isEmpty(), column.toString());
                assertTrue(column.meaning().endsWith("."), column.toString());
                assertTrue(names.add(column.name()), column.toString());
            }
            assertNotNull(table.title());
            table.rows().forEach(r -> assertEquals(table.columns().size(), r.size()));
        }
    }

    /** Long headers of many head columns would leave no room for figures, and none would leave rows without a name. */
    @Test
    void everyTableSaysWhichColumnsItsRowsAreAbout() {
        for (ResultTable table : ResultTables.of(result, UnitSystem.US)) {
            assertTrue(table.heads() >= 1 && table.heads() <= 5, table.name() + ": " + table.heads());
            assertTrue(table.columns().subList(0, table.heads()).stream().noneMatch(c -> c.type() == ResultColumn.Type.MONEY), table.name());
        }
    }
}
