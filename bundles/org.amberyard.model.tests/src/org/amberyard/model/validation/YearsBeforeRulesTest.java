package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.fleet.BusRecord;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.plans.Financing;
import org.amberyard.model.plans.FinancingKind;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.PortPurchase;
import org.junit.jupiter.api.Test;

/** What a study tells of the years before its base year, which is 2026. */
class YearsBeforeRulesTest {
    private final SmallStudy small = new SmallStudy();

    private BusRecord record() {
        BusRecord record = FleetFactory.eINSTANCE.createBusRecord();
        record.setBus(small.bus);
        small.study.getBusRecords().add(record);
        return record;
    }

    @Test
    void pricesAreOfTheBaseYearOrBefore() {
        small.study.getSettings().setPriceYear(2024);
        Said.of(small);
        small.study.getSettings().setPriceYear(2027);
        Said.of(small, "ERROR: Settings: price year is 2027, after the base year 2026; prices must be in money of the base year "
                + "or before.");
    }

    @Test
    void aBusHasOneRecord() {
        record();
        Said.of(small);
        record();
        Said.of(small, "ERROR: Bus record B01: the bus has a record already; keep one row for each bus.");
    }

    @Test
    void theRecordOfAPackIsWholeAndItsYearsAreOver() {
        BusRecord record = record();
        record.setPackYears(2.0);
        record.setTasksFromYear(2027);
        Said.of(small, "ERROR: Bus record B01: it is empty, but other fields tell of the pack; fill in “distance with pack” or empty "
                + "them all.",
                "ERROR: Bus record B01: tasks counted from is 2027, after the base year 2026; it must be the base year or "
                        + "an earlier one.");
    }

    @Test
    void whatStandsIsTheSameInEveryPlan() {
        PortPurchase standing = PlansFactory.eINSTANCE.createPortPurchase();
        standing.setYear(2025);
        standing.setPortType(small.ports.getPortType());
        small.plan.getPortPurchases().add(standing);
        Said.of(small, "WARNING: Plan Electric: its ports and site works from before the base year 2026 differ from those of plan "
                + "“Baseline”; what stands is the same in every plan.");
    }

    @Test
    void aSumThatIsDrawnHasAYearBeforeTheBaseYear() {
        Financing loan = PlansFactory.eINSTANCE.createFinancing();
        loan.setName("Loan");
        loan.setKind(FinancingKind.LOAN);
        loan.setDrawnSum(1000);
        loan.setDrawnYear(2025);
        small.plan.getFinancing().add(loan);
        Said.of(small);
        loan.setDrawnYear(2026);
        Said.of(small, "ERROR: Financing Loan of plan Electric: year drawn is 2026; a sum that is drawn already needs a year before the "
                + "base year 2026.");
    }
}
