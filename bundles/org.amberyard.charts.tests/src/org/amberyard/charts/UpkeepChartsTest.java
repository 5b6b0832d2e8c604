package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.plan.FleetRules;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.upkeep.BrakeWear;
import org.amberyard.core.upkeep.MaintenanceTask;
import org.amberyard.core.upkeep.Powertrain;
import org.amberyard.core.upkeep.Skill;
import org.amberyard.core.upkeep.TaskScope;
import org.amberyard.core.upkeep.TaskTrigger;
import org.amberyard.core.upkeep.UpkeepCause;
import org.amberyard.core.upkeep.UpkeepRules;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

/** Charts of upkeep of the sample district, with a task a year for each kind of bus (invented). */
class UpkeepChartsTest {
    private static final int ELECTRIC_PLAN = 1;
    private final StudyInput plain = SampleDistrict.small();

    private static MaintenanceTask yearly(String name, UpkeepCause cause, Powertrain powertrain, Skill skill) {
        double never = Double.POSITIVE_INFINITY;
        return new MaintenanceTask(name, cause, new TaskScope(powertrain, ""), new TaskTrigger(never, 12, never, BrakeWear.NONE),
                Optional.empty(), Optional.empty(), 100, 3, skill, 0);
    }

    private StudyResult withTasks() {
        return withTasks(0);
    }

    private StudyResult withTasks(double shopHours) {
        return withTasks(shopHours, Map.of());
    }

    private StudyResult withTasks(double shopHours, Map<String, Double> measured) {
        FleetRules old = plain.rules();
        UpkeepRules upkeep = new UpkeepRules(List.of(yearly("Oil", UpkeepCause.ENGINE, Powertrain.ENGINE, Skill.TECHNICIAN),
                yearly("Inspection", UpkeepCause.HIGH_VOLTAGE, Powertrain.ELECTRIC, Skill.HIGH_VOLTAGE)), 50, 400, shopHours, measured);
        FleetRules rules = new FleetRules(old.spareCoverShare(), old.insuranceShare(), old.reserveShare(), upkeep);
        return SampleDistrict.evaluated(new StudyInput(plain.name(), plain.currency(), plain.baseYear(), plain.years(),
                plain.money(), plain.duty(), plain.types(), plain.buses(), plain.depot(), plain.prices(), plain.funding(),
                plain.air(), rules, plain.plans(), plain.baseline(), plain.trips()));
    }

    @Test
    void hoursAreThoseOfTheTasks() {
        StudyResult result = withTasks();
        Chart chart = ShopHoursChart.of(result, ELECTRIC_PLAN, UnitSystem.US, ChartTheme.light());
        assertEquals(plain.years(), chart.data().rows().size());
        for (List<Object> row : chart.data().rows()) {
            double hours = row.stream().skip(1).mapToDouble(c -> (double) c).sum();
            assertEquals(3.0 * plain.buses().size(), hours, 1e-9, "a task a year for each bus");
        }
        assertTrue(chart.textAlternative().contains(" 2 people trained for high voltage are needed from "), chart.textAlternative());
    }

    @Test
    void theCaptionSaysWhetherTheShopIsOverloadedOrIdle() {
        double hours = 3.0 * plain.buses().size();
        assertTrue(words(hours / 2).contains("(200 % of capacity, overloaded)"), words(hours / 2));
        assertTrue(words(hours / 2).contains("Overloaded in " + plain.baseYear()), words(hours / 2));
        assertTrue(words(2 * hours).contains("(50 % of capacity, partly idle)"), words(2 * hours));
    }

    private String words(double shopHours) {
        return ShopHoursChart.of(withTasks(shopHours), ELECTRIC_PLAN, UnitSystem.US, ChartTheme.light()).textAlternative();
    }

    @Test
    void withoutTasksItSaysWhereTheyAreEntered() {
        Chart chart = ShopHoursChart.of(SampleDistrict.evaluated(plain), 0, UnitSystem.US, ChartTheme.light());
        assertTrue(chart.textAlternative().startsWith("No task of the shop applies"), chart.textAlternative());
    }

    @Test
    void enginesStandBesideElectricBuses() {
        Chart chart = UpkeepCauseChart.of(withTasks(), ELECTRIC_PLAN, UnitSystem.METRIC, ChartTheme.light());
        List<List<Object>> rows = chart.data().rows();
        assertEquals(List.of("engine", "high voltage"), rows.stream().map(r -> r.get(0)).toList());
        assertTrue((double) rows.get(0).get(1) > 0 && (double) rows.get(0).get(2) == 0);
        assertTrue((double) rows.get(1).get(1) == 0 && (double) rows.get(1).get(2) > 0);
    }

    @Test
    void aRateIsNotSplit() {
        Chart chart = UpkeepCauseChart.of(SampleDistrict.evaluated(plain), 0, UnitSystem.US, ChartTheme.light());
        assertEquals(List.of("not split"), chart.data().rows().stream().map(r -> r.get(0)).toList());
        assertTrue(chart.textAlternative().endsWith("electric buses none."), chart.textAlternative());
    }

    @Test
    void theCaptionSaysThatWorkOrdersCalibrated() {
        assertFalse(UpkeepCauseChart.of(withTasks(), 0, UnitSystem.US, ChartTheme.light()).textAlternative()
                .contains("work orders"));
        String words = UpkeepCauseChart.of(withTasks(0, Map.of(plain.buses().get(0).name(), 1.0)), 0, UnitSystem.US,
                ChartTheme.light()).textAlternative();
        assertTrue(words.contains("Calibrated by the work orders of 1 bus"), words);
    }
}
