package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.air.AirFactory;
import org.amberyard.model.air.EngineEmission;
import org.amberyard.model.air.FuelEmission;
import org.amberyard.model.air.GridBasis;
import org.amberyard.model.air.GridEmission;
import org.amberyard.model.air.HealthCost;
import org.amberyard.model.air.SocialCost;
import org.amberyard.model.air.WarmingSet;
import org.amberyard.model.air.WearEmission;
import org.amberyard.model.common.CommonFactory;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.study.EmissionFactors;
import org.junit.jupiter.api.Test;

class AirRulesTest {
    private final SmallStudy small = new SmallStudy();
    private final EmissionFactors factors = small.study.getEmissionFactors();

    private EngineEmission engines(int first, int last) {
        EngineEmission row = AirFactory.eINSTANCE.createEngineEmission();
        row.setFirstModelYear(first);
        row.setLastModelYear(last);
        factors.getEngineEmissions().add(row);
        return row;
    }

    private GridEmission grid(String region, GridBasis basis, int year) {
        GridEmission row = AirFactory.eINSTANCE.createGridEmission();
        row.setRegion(region);
        row.setBasis(basis);
        row.setYear(year);
        factors.getGridEmissions().add(row);
        return row;
    }

    private SocialCost social(int year, double rate) {
        SocialCost row = AirFactory.eINSTANCE.createSocialCost();
        row.setYear(year);
        row.setRate(rate);
        factors.getSocialCosts().add(row);
        return row;
    }

    @Test
    void tablesThatAreRightAreLeftAlone() {
        engines(1960, 2009);
        engines(2010, 2100);
        engines(2010, 2100).setBodyTypes("A");
        grid("North", GridBasis.AVERAGE, 2025);
        grid("North", GridBasis.MARGINAL, 2025);
        factors.setGridRegion("North");
        factors.setGridBasis(GridBasis.MARGINAL);
        social(2030, 0.02);
        social(2040, 0.02);
        factors.getWearEmissions().add(AirFactory.eINSTANCE.createWearEmission());
        Said.of(small);
    }

    @Test
    void modelYearsAreInOrderAndInOneGroup() {
        engines(1960, 2009);
        engines(2009, 2100);
        engines(2100, 2005);
        Said.of(small, "ERROR: Engine emissions diesel 2009 to 2100: some of its model years stand in diesel 1960 "
                + "to 2009 too; let each engine have one group.",
                "ERROR: Engine emissions diesel 2100 to 2005: its first model year 2100 is after its last model "
                        + "year 2005; were they swapped?");
    }

    @Test
    void enginesWithoutAGroupAreNamed() {
        engines(2020, 2100);
        Said.of(small, "WARNING: Emission factors: no engine emissions hold for the engine of B01, so what it emits is not known; add "
                + "a group for it.");
    }

    @Test
    void bodyTypesAreLetters() {
        engines(1960, 2100).setBodyTypes("A-C");
        engines(1960, 2100);
        WearEmission wear = AirFactory.eINSTANCE.createWearEmission();
        wear.setBodyTypes("E");
        factors.getWearEmissions().add(wear);
        Said.of(small, "ERROR: Engine emissions diesel 1960 to 2100, body A-C: body types is A-C; allowed are the "
                + "letters A, B, C and D without anything between them, or nothing for all.",
                "ERROR: Dust of brakes and tyres body E: body types is E; allowed are the letters A, B, C and D "
                        + "without anything between them, or nothing for all.");
    }

    @Test
    void theGridThatIsChosenHasFactors() {
        factors.setGridRegion("South");
        Said.of(small, "ERROR: Emission factors: grid region is South, which has no grid emissions; add them.");
        grid("North", GridBasis.AVERAGE, 2025);
        grid("North", GridBasis.AVERAGE, 2025);
        Said.of(small, "ERROR: Emission factors: grid region is South, which has no grid emissions; choose one of North.",
                "ERROR: Grid emissions North average 2025: it appears more than once; keep one.");
    }

    @Test
    void marginalPlantsAreEnteredBeforeTheyAreChosen() {
        grid("North", GridBasis.AVERAGE, 2025);
        factors.setGridBasis(GridBasis.MARGINAL);
        Said.of(small, "ERROR: Emission factors: grid basis is marginal, but there are no marginal grid emissions of the region; add "
                + "them or choose average.");
    }

    @Test
    void theRateOfTheSocialCostIsAColumnOfItsTable() {
        social(2030, 0.015);
        social(2030, 0.025);
        social(2030, 0.025);
        Said.of(small, "ERROR: Emission factors: social cost at rate is 0.02 share, for which the table has no column; choose one of "
                + "0.015 share, 0.025 share.",
                "ERROR: Social cost CO2 2030 at 2.5 %: it appears more than once; keep one.");
    }

    @Test
    void healthCostsRunFromLowToHigh() {
        HealthCost cost = AirFactory.eINSTANCE.createHealthCost();
        cost.setLowPerT(20_000);
        cost.setHighPerT(5_000);
        factors.getHealthCosts().add(cost);
        Said.of(small, "ERROR: Health cost NOx of buses: low end is 20000 money/t, above its high end 5000 money/t; "
                + "were they swapped?");
    }

    @Test
    void ownWarmingPotentialsCountOnlyWhenChosen() {
        factors.setGwpCh4(82.5);
        Said.of(small, "WARNING: Emission factors: warming potential of CH4 is 82.5 but counts only when own values are chosen; the "
                + "study uses AR5.");
        factors.setWarmingSet(WarmingSet.OWN);
        Said.of(small);
    }

    @Test
    void aFuelHasItsFactorsOnce() {
        factors.getFuelEmissions().add(AirFactory.eINSTANCE.createFuelEmission());
        FuelEmission again = AirFactory.eINSTANCE.createFuelEmission();
        factors.getFuelEmissions().add(again);
        Said.of(small, "ERROR: Fuel emissions diesel: the fuel appears more than once; keep one.");
    }

    @Test
    void placeholdersAreCounted() {
        SourceNote note = CommonFactory.eINSTANCE.createSourceNote();
        note.setField("*");
        note.setQuality(Quality.PLACEHOLDER);
        engines(1960, 2100).getSources().add(note);
        Said.of(small, "INFO: Study New study: placeholders stand in engine emissions diesel 1960 to 2100; what rests on them is not "
                + "for submission.");
    }
}
