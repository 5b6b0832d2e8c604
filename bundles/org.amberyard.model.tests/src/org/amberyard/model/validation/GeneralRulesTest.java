package org.amberyard.model.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.amberyard.model.SmallStudy;
import org.amberyard.model.fleet.Role;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.study.StudyFactory;
import org.junit.jupiter.api.Test;

class GeneralRulesTest {
    private final SmallStudy small = new SmallStudy();

    @Test
    void nothingIsSaidOfARightStudy() {
        Said.of(small);
    }

    @Test
    void aNewStudyHasNoFinding() {
        assertEquals(List.of(), new StudyValidation(ValueText.PLAIN).check(StudyDefaults.create()));
    }

    @Test
    void aStudyWithNothingInItIsCheckedToTheEnd() {
        List<Finding> findings = new StudyValidation(ValueText.PLAIN).check(StudyFactory.eINSTANCE.createStudy());
        assertEquals("Study without name: name is missing; enter it.", findings.get(0).message());
        assertEquals(9, findings.stream().filter(f -> f.severity() == Severity.ERROR).count());
    }

    @Test
    void aNumberMustExceedItsLimit() {
        small.am.setDistanceKm(-3);
        Said.of(small, "ERROR: Run AM of route R01: distance is -3 km; it must be above 0 km.");
    }

    @Test
    void aFindingNamesElementAndField() {
        small.am.setDistanceKm(-3);
        Finding finding = new StudyValidation(ValueText.PLAIN).check(small.study).get(0);
        assertSame(small.am, finding.element());
        assertSame(RoutesPackage.Literals.RUN__DISTANCE_KM, finding.feature());
    }

    @Test
    void aNumberStaysWithinItsLimits() {
        small.am.setStops(0);
        small.pm.setMeanRiders(121);
        Said.of(small, "ERROR: Run AM of route R01: stops is 0; it must be at least 1.",
                "ERROR: Run PM of route R01: mean riders is 121; it must be at most 120.");
    }

    @Test
    void limitsThemselvesAreAllowed() {
        small.study.getSettings().setHorizonYears(40);
        small.study.getSettings().setReserveShare(0);
        Said.of(small);
    }

    @Test
    void aNumberIsOne() {
        small.diesel.setPurchasePrice(Double.NaN);
        small.electric.setPurchasePrice(Double.POSITIVE_INFINITY);
        Said.of(small, "ERROR: Engine bus type C diesel: price is not a number; enter one.",
                "ERROR: Electric bus type C electric: price is not a number; enter one.");
    }

    @Test
    void aPercentageStoredAsItReadsIsPointedOut() {
        small.study.getSettings().setDiscountRate(4.5);
        Said.of(small, "ERROR: Settings: discount rate is 4.5 share; it must be at most 0.5 share. "
                + "Was 0.045 share meant?");
    }

    @Test
    void messagesUseTheCallersUnits() {
        small.am.setDistanceKm(-3);
        ValueText miles = (feature, owner, value) -> Math.round(((Number) value).doubleValue() / 1.609344) + " mi";
        assertEquals("Run AM of route R01: distance is -2 mi; it must be above 0 mi.",
                new StudyValidation(miles).check(small.study).get(0).message());
    }

    @Test
    void limitsOfWholeNumbersAreHandedOverWhole() {
        small.am.setDepartureMin(2000);
        ValueText types = (feature, owner, value) -> value.getClass().getSimpleName();
        assertEquals("Run AM of route R01: departure is Integer; it must be at most Integer.",
                new StudyValidation(types).check(small.study).get(0).message());
    }

    @Test
    void requiredFieldsAreFilled() {
        small.bus.setName("  ");
        small.am.setCalendar(null);
        small.study.getSettings().setCurrency("");
        Said.of(small, "ERROR: Settings: currency is missing; enter it.",
                "ERROR: Run AM of route R01: calendar is missing; choose one.",
                "ERROR: Bus no. 1: name is missing; enter it.");
    }

    @Test
    void requiredPartsAreThere() {
        small.study.getDepot().setTariff(null);
        Said.of(small, "ERROR: Depot Depot: tariff is missing; add it.");
    }

    @Test
    void namesTellSiblingsApart() {
        small.addBus("B02").setRole(Role.SPARE);
        small.addBus(" B01 ").setRole(Role.SPARE);
        Said.of(small, "ERROR: Bus  B01 : B01 appears on rows 1 and 3 of Buses; give each its own name.");
    }

    @Test
    void referencesStayWithinTheStudy() {
        SmallStudy other = new SmallStudy();
        other.school.setName("Other year");
        small.am.setCalendar(other.school);
        small.study.setBaseline(other.plan);
        Said.of(small, "ERROR: Study New study: baseline is Electric, which is not part of this study; choose another.",
                "ERROR: Run AM of route R01: calendar is Other year, which is not part of this study; choose another.");
    }

    @Test
    void aPlanIsThere() {
        small.study.getPlans().clear();
        small.study.setBaseline(null);
        Said.of(small, "ERROR: Study New study: baseline is missing; choose one.",
                "ERROR: Study New study: it has no plan; add one and make it the baseline.");
    }

    @Test
    void aFindingMayConcernAnElementAsAWhole() {
        small.bus.setRole(Role.SPARE);
        small.bus.setRoute(null);
        Said.of(small, "WARNING: Route R01: no bus runs it, so its distance is not in the costs; assign a route bus.");
        assertNull(new StudyValidation(ValueText.PLAIN).check(small.study).get(0).feature());
    }
}
