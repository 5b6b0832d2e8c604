package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.UnitChoice;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

class AssumptionsTest {
    private final Study study = new ExamplePapers().study();
    private final Assumptions own = Assumptions.of(study);

    @Test
    void allPlansOfAStudyStandOnTheSame() {
        assertEquals("All plans stand on the same assumptions: prices, tariff “" + study.getDepot().getTariff().getName()
                + "”, climate of “Ostrick Vale Transportation Yard”, base year 2026, constant money; study version " + StudyVersion.of(study)
                + ".", own.words());
    }

    /** Another plan or choice of units is none of them; a price, a run and a name of a bus are. */
    @Test
    void partsInWhichAnotherStudyDiffersAreNamed() {
        Study other = EcoreUtil.copy(study);
        other.getPlans().remove(2);
        other.getSettings().setUnits(UnitChoice.METRIC);
        assertEquals("“o” stands on the same assumptions: prices, depot with tariff, climate, base date with money rules, bus types, buses of "
                + "today, routes with trips, programmes, upkeep tasks, emission factors; versions " + own.version() + " and "
                + StudyVersion.of(other) + ".", own.against(Assumptions.of(other), "o"));
        ((FuelPrice) other.getPrices().get(0)).setPricePerL(2);
        other.getRoutes().get(3).getRuns().get(0).setDepartureMin(401);
        other.getBuses().get(0).setName("Bus 1");
        assertEquals("“o” stands on other assumptions: prices, buses of today, routes with trips; the same: depot with tariff, climate, base date "
                + "with money rules, bus types, programmes, upkeep tasks, emission factors; versions " + own.version() + " and "
                + StudyVersion.of(other) + ".", own.against(Assumptions.of(other), "o"));
    }
}
