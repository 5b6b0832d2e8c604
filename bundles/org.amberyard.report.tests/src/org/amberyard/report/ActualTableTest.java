package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.plan.ActualFigure;
import org.amberyard.core.plan.ActualYear;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.YearFigures;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

/** The small district of two plans, of which the base year and the year before are over. */
class ActualTableTest {
    private static final double L_PER_GALLON = 3.785411784;
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
    private final StudyResult result = SampleDistrict.evaluated(over(SampleDistrict.small(),
            new ActualYear(-2, burnt(50_000), "Last year’s plan", burnt(40_000)), new ActualYear(-1, burnt(40_000)),
            new ActualYear(0, new YearFigures(OptionalDouble.of(5000), OptionalDouble.of(900), OptionalDouble.of(37_854.11784),
                    OptionalDouble.of(35_000), UNKNOWN))));
    private final ResultTable table = ResultTables.of(result, UnitSystem.US).stream()
            .filter(t -> t.name().equals("plan_against_actual")).findFirst().orElseThrow();

    private static YearFigures burnt(double fuelL) {
        return new YearFigures(UNKNOWN, UNKNOWN, OptionalDouble.of(fuelL), UNKNOWN, UNKNOWN);
    }

    private static StudyInput over(StudyInput s, ActualYear... actuals) {
        return new StudyInput(s.name(), s.currency(), s.baseYear(), s.years(), s.money(), s.duty(), s.types(), s.buses(), s.depot(),
                s.prices(), s.funding(), s.air(), s.rules(), s.plans(), s.baseline(), s.trips(), List.of(actuals));
    }

    @Test
    void everyPlanHasARowForEveryYearThatIsOver() {
        assertEquals(List.of(2024, 2025, 2026, 2025, 2026), table.rows().stream().map(r -> r.get(1)).toList());
        assertEquals(result.plans().get(0).name(), table.cell(2, "plan"));
        assertEquals(result.plans().get(1).name(), table.cell(4, "plan"));
    }

    /** A year that was foreseen before the study was rolled stands once, with the plan that foresaw it. */
    @Test
    void whatWasForeseenBeforeTheStudyWasRolledIsKept() {
        assertEquals("Last year’s plan", table.cell(0, "plan"));
        assertEquals("kept from before the base year was rolled", table.cell(0, "planned_figures"));
        assertEquals(40_000 / L_PER_GALLON, (Double) table.cell(0, "fuel_planned"), 1e-6);
        assertEquals(25, (Double) table.cell(0, "fuel_difference_share"), 1e-9);
        assertNull(table.cell(0, "upkeep_planned"));
    }

    @Test
    void plannedAndActualStandInTheUnitsOfTheUser() {
        double planned = ActualFigure.FUEL.planned(result.plans().get(0), 0).orElseThrow() / L_PER_GALLON;
        assertEquals(planned, (Double) table.cell(2, "fuel_planned"), 1e-9 * planned);
        assertEquals(10_000, (Double) table.cell(2, "fuel_actual"), 1e-6);
        assertEquals(10_000 - planned, (Double) table.cell(2, "fuel_difference"), 1e-6);
        assertEquals(100 * (10_000 - planned) / planned, (Double) table.cell(2, "fuel_difference_share"), 1e-6);
        assertEquals(35_000 - (Double) table.cell(2, "fuel_cost_planned"), (Double) table.cell(2, "fuel_cost_difference"), 0.02);
    }

    @Test
    void whatIsNotKnownHasNoFigure() {
        assertNull(table.cell(2, "upkeep_actual"));
        assertNull(table.cell(2, "upkeep_difference"));
        assertNotNull(table.cell(2, "upkeep_planned"));
        assertNull(table.cell(1, "fuel_planned"));
        assertEquals("none: before the base year", table.cell(1, "planned_figures"));
        assertEquals("foreseen by this study", table.cell(2, "planned_figures"));
        assertNotNull(table.cell(1, "fuel_actual"));
    }

    @Test
    void aStudyOfWhichNoYearIsOverHasNoRows() {
        assertEquals(List.of(), ResultTables.of(SampleDistrict.evaluated(SampleDistrict.small()), UnitSystem.US).stream()
                .filter(t -> t.name().equals("plan_against_actual")).findFirst().orElseThrow().rows());
    }
}
