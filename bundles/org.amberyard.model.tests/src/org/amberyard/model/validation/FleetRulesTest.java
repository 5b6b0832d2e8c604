package org.amberyard.model.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FleetRulesTest {
    private final SmallStudy small = new SmallStudy();

    @Test
    void successorsHaveTheSameBody() {
        small.diesel.setSuccessor(small.addDiesel("D diesel", BodyType.D));
        Said.of(small, "ERROR: Engine bus type C diesel: it is a type C bus but is replaced by D diesel, a type D bus; "
                + "choose a type C bus.");
    }

    @Test
    void busesLoseValue() {
        small.diesel.setPurchasePrice(3000);
        Said.of(small, "WARNING: Engine bus type C diesel: value at retirement age is 3500 money, above its price of "
                + "3000 money; check both.");
    }

    @Test
    void packsWearBeforeTheyAreReplaced() {
        small.electric.setEndOfLifeShare(1);
        Said.of(small, "WARNING: Electric bus type C electric: end-of-life capacity is 1 share, so a pack counts as worn "
                + "out when new; enter the share at which packs are replaced.");
    }

    @Test
    void refurbishedPacksAreNotWornOut() {
        small.electric.setRefurbishedPriceShare(0.5);
        small.electric.setRefurbishedHealth(0.7);
        Said.of(small, "ERROR: Electric bus type C electric: refurbished pack, capacity is 0.7 share, not above the end-of-life "
                + "capacity of 0.7 share; a refurbished pack must be above it.");
    }

    @Test
    void refurbishedPacksThatAreNotBoughtMayBeWornOut() {
        small.electric.setRefurbishedHealth(0.5);
        Said.of(small);
    }

    @Test
    void warrantiesCoverADistance() {
        small.electric.setWarrantyYears(8);
        small.electric.setWarrantyKm(0);
        Said.of(small, "WARNING: Electric bus type C electric: its warranty covers no distance, so it never pays; enter the "
                + "distance that it covers.");
    }

    @Test
    void electricBusesCanBeCharged() {
        small.electric.setAcAcceptanceKw(0);
        small.electric.setDcAcceptanceKw(0);
        Said.of(small, "WARNING: Electric bus type C electric: it accepts neither AC nor DC power, so no port can charge "
                + "it; enter one of the two.");
    }

    @Test
    void theBodyFitsTheRoute() {
        small.route.setBodyType(BodyType.D);
        small.plan.getReplacements().clear();
        Said.of(small, "ERROR: Bus B01: C diesel is a type C bus but route R01 needs a type D bus; change one of them.");
    }

    @Test
    void aRouteThatNeedsALiftGetsOne() {
        small.route.setLiftRequired(true);
        Said.of(small, "WARNING: Bus B01: route R01 needs a lift but C diesel has none; choose another type.");
    }

    @Test
    void rolesAndRoutesAgree() {
        small.addBus("B02");
        small.bus.setRole(Role.ACTIVITY);
        Said.of(small, "WARNING: Route R01: no bus runs it, so its distance is not in the costs; assign a route bus.",
                "WARNING: Bus B01: its role is activity but it has route R01; clear the route or change the role.",
                "WARNING: Bus B02: its role is route but it has no route; choose one, or make it a spare.");
    }

    @Test
    void aRouteHasOneBus() {
        small.addBus("B02").setRoute(small.route);
        Said.of(small, "WARNING: Bus B02: route R01 has bus B01 already, so its distance counts twice; "
                + "choose another route or make one a spare.");
    }

    @Test
    void enginesAreNotNewerThanTheChassis() {
        small.bus.setEngineModelYear(2016);
        Said.of(small, "WARNING: Bus B01: engine model year is 2016, newer than the chassis (2015); check both, "
                + "or note the engine's replacement.");
    }

    @Test
    void enginesAreNotMuchOlderThanTheChassis() {
        small.bus.setEngineModelYear(2013);
        Said.of(small);
        small.bus.setEngineModelYear(2012);
        Said.of(small, "WARNING: Bus B01: engine model year is 2012, more than 2 years older than the chassis (2015); "
                + "check both.");
    }

    @Test
    void engineYearsHaveFourDigits() {
        small.bus.setEngineModelYear(14);
        Said.of(small, "WARNING: Bus B01: engine model year is 14; enter the year on the engine's label, all four digits.");
    }

    @Test
    void electricBusesNeedNoEngineYear() {
        small.bus.setType(small.electric);
        small.bus.setEngineModelYear(0);
        small.ports.setYear(2026);
        small.study.setBaseline(small.plan);
        small.study.getPlans().remove(0);
        Said.of(small);
    }

    @Test
    void theFleetGrowsByNewBuses() {
        small.bus.setInServiceYear(2027);
        small.bus.setOdometerKm(0);
        Said.of(small);
        small.bus.setOdometerKm(100);
        Said.of(small, "ERROR: Bus B01: odometer is 100 km, but the fleet only grows by it, new, in 2027; it must be 0, or the "
                + "bus in service since the base year 2026 or earlier.");
    }

    @Test
    void overdueBusesAreNamed() {
        small.bus.setPlannedRetirementYear(2025);
        Said.of(small, "INFO: Bus B01: planned retirement is 2025, before the base year 2026, "
                + "so it is overdue from the start.");
    }

    /** The first is the worked example of the check digit in 49 CFR 565 as commonly reprinted; from memory. */
    @ParameterizedTest
    @ValueSource(strings = {"1M8GDM9AXKP042788", "11111111111111111", "1m8gdm9axkp042788 "})
    void rightNumbersPass(String vin) {
        small.bus.setVin(vin);
        Said.of(small);
    }

    @Test
    void theCheckDigitIsComputed() {
        assertEquals('X', new Vin("1M8GDM9A0KP042788").expectedCheckDigit());
        assertFalse(new Vin("1M8GDM9AXKPO42788").hasOnlyValidCharacters());
    }

    @Test
    void wrongNumbersAreNamed() {
        small.bus.setVin("1M8GDM9AXKP042789");
        Bus second = small.addBus("B02");
        second.setRole(Role.SPARE);
        second.setVin("1M8GDM9AX");
        Bus third = small.addBus("B03");
        third.setRole(Role.SPARE);
        third.setVin("1M8GDM9AXKPO42788");
        String remedy = "; compare it with the registration. Programmes refuse a wrong one.";
        Said.of(small,
                "WARNING: Bus B01: VIN 1M8GDM9AXKP042789 has the check digit X in the ninth place where 1 belongs" + remedy,
                "WARNING: Bus B02: VIN 1M8GDM9AX has 9 characters instead of 17" + remedy,
                "WARNING: Bus B03: VIN 1M8GDM9AXKPO42788 has a character that is never used in one (I, O and Q are not)"
                        + remedy);
    }

    @Test
    void distanceBeyondARouteNeedsARouteToLearnFrom() {
        Bus trips = small.addBus("B02");
        trips.setRole(Role.ACTIVITY);
        trips.setOtherKmPerYear(100);
        Said.of(small);
        trips.setType(small.addDiesel("D diesel", BodyType.D));
        Said.of(small, "ERROR: Bus B02: other distance per year is 100 km but no route needs a type D bus, so its "
                + "consumption is unknown; add such a route or enter 0.");
    }
}
