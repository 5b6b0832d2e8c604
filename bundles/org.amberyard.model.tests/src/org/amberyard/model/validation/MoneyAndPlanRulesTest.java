package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.depot.FlatTariff;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.Role;
import org.amberyard.model.funding.FundingFactory;
import org.amberyard.model.plans.OneOffCost;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.prices.CostIndex;
import org.amberyard.model.prices.FluidPrice;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.IndexSubject;
import org.amberyard.model.prices.PackPrice;
import org.amberyard.model.prices.PricePath;
import org.amberyard.model.prices.PricePoint;
import org.amberyard.model.prices.PricesFactory;
import org.amberyard.model.vehicles.Fuel;
import org.amberyard.model.vehicles.HeatSource;
import org.junit.jupiter.api.Test;

class MoneyAndPlanRulesTest {
    private final SmallStudy small = new SmallStudy();

    @Test
    void aDepotHasAPortType() {
        small.plan.getPortPurchases().clear();
        small.plan.getReplacements().clear();
        small.study.getDepot().getPortTypes().clear();
        Said.of(small, "ERROR: Depot Depot: it has no port type; add one that plans can buy.");
    }

    @Test
    void thereIsTimeToCharge() {
        small.study.getDepot().setChargeWindowEndMin(1320);
        Said.of(small, "ERROR: Depot Depot: charging starts and ends at 22:00; enter an end that leaves time to charge.");
    }

    @Test
    void pricesThatAreNeededAreThere() {
        small.study.getPrices().removeIf(p -> p instanceof FuelPrice || p instanceof FluidPrice || p instanceof PackPrice);
        Said.of(small, "ERROR: Study New study: the price of diesel is missing, which C diesel burns; add a fuel price.",
                "ERROR: Study New study: the price of exhaust fluid is missing; add it.",
                "ERROR: Study New study: the price of a battery pack is missing; add it.");
    }

    @Test
    void aDiscountRateTypedAsAShareStandsOut() {
        small.study.getSettings().setDiscountRate(0.00045);
        Said.of(small, "WARNING: Settings: discount rate is 0.00045 share, which is next to nothing; was 0.045 share meant?");
        small.study.getSettings().setDiscountRate(0);
        Said.of(small);
    }

    @Test
    void aFuelFiredHeaterNeedsDiesel() {
        small.diesel.setFuel(Fuel.PROPANE);
        small.electric.setHeatSource(HeatSource.FUEL_FIRED);
        small.study.getPrices().removeIf(p -> p instanceof FuelPrice price && price.getFuel() == Fuel.DIESEL);
        Said.of(small, "ERROR: Study New study: the price of diesel is missing, which C electric burns; add a fuel price.");
    }

    @Test
    void fuelsThatNothingBurnsNeedNoPrice() {
        small.study.getPrices().removeIf(p -> p instanceof FuelPrice price && price.getFuel() == Fuel.PROPANE);
        Said.of(small);
    }

    @Test
    void noPriceAppearsTwice() {
        small.study.getPrices().add(PricesFactory.eINSTANCE.createFuelPrice());
        small.study.getPrices().add(PricesFactory.eINSTANCE.createPackPrice());
        small.study.getPrices().add(PricesFactory.eINSTANCE.createCostIndex());
        Said.of(small, "ERROR: Fuel price diesel: it appears more than once; keep one.",
                "ERROR: Battery pack price: it appears more than once; keep one.",
                "ERROR: Cost index electric energy: it appears more than once; keep one.");
    }

    @Test
    void aMissingIndexHoldsThePriceConstant() {
        small.study.getPrices().removeIf(p -> p instanceof CostIndex index && index.getSubject() == IndexSubject.UPKEEP);
        Said.of(small, "INFO: Study New study: there is no cost index for upkeep, so it is held constant above general "
                + "inflation.");
    }

    @Test
    void pointsRiseByYear() {
        PricePath diesel = small.study.getPrices().get(0);
        diesel.getPoints().add(point(2030));
        diesel.getPoints().add(point(2028));
        diesel.getPoints().add(point(2030));
        Said.of(small, "WARNING: Price point 2028 of fuel price diesel: it stands after 2030; "
                + "put the points in the order of the years.",
                "ERROR: Price point 2030 of fuel price diesel: the year has a point already; keep one.");
    }

    private static PricePoint point(int year) {
        PricePoint point = PricesFactory.eINSTANCE.createPricePoint();
        point.setYear(year);
        return point;
    }

    @Test
    void pricesInCentsStandOut() {
        ((FuelPrice) small.study.getPrices().get(0)).setPricePerL(9.5);
        ((FlatTariff) small.study.getDepot().getTariff()).setEnergyPricePerKwh(2.5);
        Said.of(small, "WARNING: Flat tariff Flat tariff: energy price is 2.5 money/kWh, which looks like cents; "
                + "was 0.025 money/kWh meant?",
                "WARNING: Fuel price diesel: price is 9.5 money/L, which looks like cents; was 0.095 money/L meant?");
    }

    @Test
    void programmesEndAfterTheyBegin() {
        small.rebate.setLastYear(2025);
        small.replacement.getProgrammes().clear();
        Said.of(small, "ERROR: Programme Rebate: its first year 2026 is after its last year 2025; were they swapped?");
    }

    @Test
    void programmesNameEachBodyOnce() {
        small.rebate.getBusAwards().add(FundingFactory.eINSTANCE.createBusAward());
        Said.of(small, "ERROR: Bus award C of programme Rebate: there is more than one award for body type C; keep one.");
    }

    @Test
    void stepsOutsideTheStudyHaveNoEffect() {
        OneOffCost training = PlansFactory.eINSTANCE.createOneOffCost();
        training.setName("Training");
        training.setYear(2041);
        small.plan.getOneOffCosts().add(training);
        Said.of(small, "WARNING: One-off cost Training of plan Electric: it has no effect because the study runs from 2026 "
                + "to 2040; change its year or the years studied.");
    }

    @Test
    void aBusIsReplacedOnceAYear() {
        Replacement again = PlansFactory.eINSTANCE.createReplacement();
        again.setBus(small.bus);
        small.plan.getReplacements().add(again);
        Said.of(small, "ERROR: Replacement 2027 B01 of plan Electric: bus B01 is replaced more than once in 2027; keep one.");
    }

    @Test
    void theNewBusFitsTheRoute() {
        small.replacement.setNewType(small.addDiesel("A diesel", BodyType.A));
        small.replacement.getProgrammes().clear();
        Said.of(small, "ERROR: Replacement 2027 B01 of plan Electric: A diesel is a type A bus but bus B01 runs route R01, "
                + "which needs a type C bus; choose another.");
    }

    @Test
    void aBusDoesNotMoveToItsOwnPlace() {
        small.replacement.setCascadeTo(small.bus);
        Said.of(small, "ERROR: Replacement 2027 B01 of plan Electric: the old bus moves to its own place; choose another or "
                + "clear the field to sell it.");
    }

    @Test
    void theOldBusFitsThePlaceThatItMovesTo() {
        Bus spare = small.addBus("B02");
        spare.setRole(Role.SPARE);
        small.replacement.setCascadeTo(spare);
        Said.of(small);
        small.replacement.setCascadeTo(small.addSmallBus("B03"));
        Said.of(small, "ERROR: Replacement 2027 B01 of plan Electric: C diesel is a type C bus but bus B03 runs route "
                + "Route of B03, which needs a type A bus; choose another.");
    }

    @Test
    void aPlaceTakesOneBusAYear() {
        Bus spare = small.addBus("B02");
        spare.setRole(Role.SPARE);
        small.replacement.setCascadeTo(spare);
        Replacement other = PlansFactory.eINSTANCE.createReplacement();
        other.setBus(spare);
        other.setYear(2027);
        other.setNewType(small.diesel);
        small.plan.getReplacements().add(other);
        Said.of(small, "ERROR: Replacement 2027 B01 of plan Electric: the old bus moves to the place of B02, which another "
                + "step of 2027 fills too; keep one of them.");
        other.setYear(2028);
        Said.of(small);
    }

    @Test
    void aScrappedBusDoesNotMove() {
        Bus spare = small.addBus("B02");
        spare.setRole(Role.SPARE);
        small.rebate.setScrapsOldBus(true);
        small.replacement.getProgrammes().add(small.rebate);
        small.replacement.setCascadeTo(spare);
        Said.of(small, "ERROR: Replacement 2027 B01 of plan Electric: programme Rebate has the old bus scrapped, so it cannot "
                + "move to the place of B02; clear the move or the programme.");
    }

    @Test
    void theOldBusIsTheOneThatThePlanBoughtBefore() {
        Replacement next = PlansFactory.eINSTANCE.createReplacement();
        next.setBus(small.bus);
        next.setYear(2035);
        next.setNewType(small.electric);
        next.setCascadeTo(small.addSmallBus("B03"));
        small.plan.getReplacements().add(next);
        Said.of(small, "ERROR: Replacement 2035 B01 of plan Electric: C electric is a type C bus but bus B03 runs route "
                + "Route of B03, which needs a type A bus; choose another.");
    }

    @Test
    void portsComeBeforeElectricBuses() {
        small.ports.setYear(2028);
        Said.of(small, "WARNING: Replacement 2027 B01 of plan Electric: B01 is electric from 2027 but the plan's first port "
                + "comes in 2028; buy ports in time.");
        small.plan.getPortPurchases().clear();
        Said.of(small, "WARNING: Replacement 2027 B01 of plan Electric: B01 is electric from 2027 but the plan buys no port; "
                + "buy ports in time.");
    }

    @Test
    void presentElectricBusesNeedPortsFromTheStart() {
        small.bus.setType(small.electric);
        small.study.getPlans().get(0).getPortPurchases().add(PlansFactory.eINSTANCE.createPortPurchase());
        small.study.getPlans().get(0).getPortPurchases().get(0).setPortType(small.ports.getPortType());
        small.ports.setYear(2026);
        Said.of(small, "WARNING: Plan Baseline: B01 is electric today but the plan's first port comes in 2027; "
                + "enter the present ports with the year in which they were bought.");
    }

    @Test
    void programmesPayInTheirYears() {
        small.rebate.setFirstYear(2028);
        small.ports.getProgrammes().add(small.rebate);
        String text = "programme Rebate pays from 2028 to 2030, so it pays nothing in 2027; change the year or the programme.";
        Said.of(small, "WARNING: Replacement 2027 B01 of plan Electric: " + text,
                "WARNING: Port purchase 2027 1 × AC port of plan Electric: " + text);
    }

    @Test
    void programmesPayForWhatTheyName() {
        small.award.setBodyType(BodyType.A);
        Said.of(small, "WARNING: Replacement 2027 B01 of plan Electric: programme Rebate has no award for body type C, "
                + "so it pays nothing; add the award or clear the programme.");
        small.replacement.setNewType(small.diesel);
        Said.of(small, "WARNING: Replacement 2027 B01 of plan Electric: programme Rebate pays for electric buses only and "
                + "C diesel is none; clear the programme or choose an electric type.");
    }

    private void buysUsed(double price, double health) {
        small.replacement.setUsedAgeYears(4);
        small.replacement.setUsedOdometerKm(60_000);
        small.replacement.setUsedPrice(price);
        small.replacement.setUsedHealth(health);
        small.replacement.getProgrammes().clear();
    }

    @Test
    void aUsedBusThatIsToldWholeIsFine() {
        buysUsed(150_000, 0.9);
        Said.of(small);
    }

    @Test
    void aUsedElectricBusHasACapacity() {
        buysUsed(150_000, 0);
        Said.of(small, "ERROR: Replacement 2027 B01 of plan Electric: the used C electric has a battery, but what it still holds is "
                + "not given; enter its capacity over that of a new one, as measured or promised by the seller.");
        small.replacement.setUsedHealth(0.7);
        Said.of(small, "WARNING: Replacement 2027 B01 of plan Electric: battery health of used bus is 0.7 share, not above 0.7 share "
                + "at which packs of C electric are replaced, so it needs another pack in its first year.");
    }

    @Test
    void aUsedEngineBusHasNone() {
        buysUsed(60_000, 0.9);
        small.replacement.setNewType(small.diesel);
        Said.of(small, "WARNING: Replacement 2027 B01 of plan Electric: battery health of used bus is 0.9 share, but C diesel has an "
                + "engine; clear the field.");
    }

    @Test
    void aUsedBusHasAPriceAndAnOdometer() {
        buysUsed(0, 0.9);
        small.replacement.setUsedOdometerKm(0);
        Said.of(small, "WARNING: Replacement 2027 B01 of plan Electric: price of used bus is 0 money, as if it were given away; enter "
                + "what it costs.",
                "WARNING: Replacement 2027 B01 of plan Electric: odometer of used bus is 0 km though its age is "
                        + "4 year; enter the reading.");
        buysUsed(900_000, 0.9);
        Said.of(small, "WARNING: Replacement 2027 B01 of plan Electric: price of used bus is 900000 money, more than a new C electric "
                + "at 150000 money; check both.");
    }

    @Test
    void aUsedBusHasYearsAndDistanceLeft() {
        buysUsed(9000, 0.9);
        small.replacement.setUsedAgeYears(15);
        small.replacement.setUsedOdometerKm(500_000);
        Said.of(small, "WARNING: Replacement 2027 B01 of plan Electric: age of used bus is 15 year, and a C electric is replaced at "
                + "15 year, so it is due a year after it comes; choose a younger bus.",
                "WARNING: Replacement 2027 B01 of plan Electric: odometer of used bus is 500000 km, and a C electric is replaced at "
                        + "402336 km, so it is due a year after it comes; choose a younger bus.");
    }

    @Test
    void aNewBusHasThePriceOfItsType() {
        small.replacement.setUsedPrice(200_000);
        Said.of(small, "ERROR: Replacement 2027 B01 of plan Electric: price of used bus is 200000 money, but the step buys no used "
                + "bus; enter its age and odometer, or clear the field.");
    }

    @Test
    void programmesForNewBusesPayForNoUsedOne() {
        buysUsed(150_000, 0.9);
        small.replacement.getProgrammes().add(small.rebate);
        Said.of(small, "WARNING: Replacement 2027 B01 of plan Electric: programme Rebate pays for new buses only and this one is "
                + "used, so it pays nothing; clear the programme or buy a new bus.");
        small.rebate.setNewOnly(false);
        Said.of(small);
    }
}
