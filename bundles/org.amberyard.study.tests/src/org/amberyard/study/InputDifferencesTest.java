package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.amberyard.model.common.Quality;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.study.Study;
import org.amberyard.study.InputDifferences.Difference;
import org.junit.jupiter.api.BeforeEach;
import org.amberyard.model.common.CommonFactory;
import org.amberyard.model.routes.Route;
import org.amberyard.model.vehicles.VehicleType;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

class InputDifferencesTest {

    private Study study;
    private Study other;

    @BeforeEach
    void load() throws StudyFileException {
        study = ExampleStudy.load();
        other = StudyFile.copy(study);
    }

    private List<Difference> differences() {
        return InputDifferences.of(List.of(study, other), study);
    }

    @Test
    void aCopyDoesNotDiffer() {
        assertEquals(List.of(), differences());
    }

    @Test
    void aValueIsToldWithItsUnitInBoth() {
        other.getSettings().setDiscountRate(0.07);
        String here = FieldFormat.of(other.getSettings().eClass().getEStructuralFeature("discountRate"), study)
                .textWithUnit(study.getSettings().getDiscountRate());
        assertEquals(List.of(new Difference("settings", "Discount rate", List.of(here, "7 %"))), differences());
    }

    @Test
    void anElementThatOnlyOneHasIsTold() {
        String bus = other.getBuses().remove(other.getBuses().size() - 1).getName();
        assertEquals(new Difference("bus " + bus, "", List.of("yes", "no")),
                differences().stream().filter(d -> d.field().isEmpty()).findFirst().orElseThrow());
    }

    @Test
    void orderDoesNotCount() {
        other.getBuses().move(0, other.getBuses().size() - 1);
        assertEquals(List.of(), differences());
    }

    @Test
    void plansDifferByTheirStepsNotByTheirNames() {
        Plan plan = study.getPlans().get(1);
        Plan copy = StudyFile.copy(study).getPlans().get(1);
        copy.setName("Another");
        assertEquals(List.of(), InputDifferences.of(List.of(plan, copy), study));
        copy.getReplacements().get(0).setYear(copy.getReplacements().get(0).getYear() + 1);
        List<Difference> found = InputDifferences.of(List.of(plan, copy), study);
        assertEquals(List.of(List.of("yes", "no"), List.of("no", "yes")), found.stream().map(Difference::values).toList());
    }

    private List<Difference> edits() {
        return InputDifferences.ofEdits(study, other, feature -> true);
    }

    private static FuelPrice diesel(Study of) {
        return of.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast).findFirst().orElseThrow();
    }

    /** An edit that writes a value notes where it is from: that is one change, as the history counts; a source alone is one too. */
    @Test
    void theSourceOfAValueIsPartOfItsChange() {
        diesel(study).getSources().clear();
        FuelPrice edited = diesel(other);
        edited.getSources().clear();
        edited.setPricePerL(2 * edited.getPricePerL());
        SourceNotes.put(edited, PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L.getName(), Quality.QUOTED, "Quote");
        assertEquals(List.of("Price"), edits().stream().map(Difference::field).toList());
        assertEquals(2, differences().size());

        edited.setPricePerL(diesel(study).getPricePerL());
        assertEquals(1, edits().size());
    }

    @Test
    void anElementThatIsRenamedIsOneChangeWhereverItIsNamed() {
        other.getBuses().get(3).setName("B99");
        String before = study.getBuses().get(3).getName();
        List<Difference> renamed = edits();
        assertEquals(List.of(List.of(before, "B99")), renamed.stream().map(Difference::values).toList());
        assertEquals("bus " + before, renamed.get(0).element());
        Bus added = FleetFactory.eINSTANCE.createBus();
        added.setName("B98");
        other.getBuses().set(5, added);
        assertEquals(List.of(true, false), edits().stream().filter(Difference::isWhole).filter(d -> d.element().startsWith("bus ")).map(d -> d.has(0))
                .toList(), "one has gone and another has come");
    }

    /** Where an element stands in its list says nothing of which it is. */
    @Test
    void aReferenceToAnotherElementInTheSamePlaceIsAChange() {
        Bus bus = other.getBuses().get(0);
        int place = other.getVehicleTypes().indexOf(bus.getType());
        VehicleType next = other.getVehicleTypes().get(place + 1);
        other.getVehicleTypes().move(place, next);
        bus.setType(next);
        assertEquals(List.of(List.of(study.getBuses().get(0).getType().getName(), next.getName())), edits().stream().map(Difference::values).toList());
    }

    @Test
    void aDeletedRouteAndTheNewOneOfItsBusAreTwoChanges() {
        Route route = other.getRoutes().get(0);
        List<Bus> on = other.getBuses().stream().filter(b -> b.getRoute() == route).toList();
        EcoreUtil.delete(route, true);
        on.forEach(b -> b.setRoute(other.getRoutes().get(0)));
        List<Difference> found = edits();
        assertTrue(found.contains(new Difference("route " + route.getName(), "", List.of("yes", "no"))), found.toString());
        assertTrue(found.contains(new Difference("bus " + on.get(0).getName(), "Route", List.of(route.getName(), other.getRoutes().get(0).getName()))),
                found.toString());
    }

    @Test
    void anElementThatIsRenamedIsFoundBesideOneThatHasGone() {
        EcoreUtil.delete(other.getBuses().get(1), true);
        int gone = edits().size();
        String before = other.getBuses().get(5).getName();
        other.getBuses().get(5).setName("B99");
        List<Difference> found = edits();
        assertEquals(gone + 1, found.size(), found.toString());
        assertTrue(found.stream().anyMatch(d -> d.values().equals(List.of(before, "B99"))), found.toString());
    }

    /** Whatever kind it is of, and however few fields it has. */
    @Test
    void aNewNameIsOneChange() {
        List<EObject> elements = new ArrayList<>();
        EcoreUtil.<EObject>getAllContents(other, true).forEachRemaining(elements::add);
        Set<EClass> named = new HashSet<>();
        for (EObject element : elements) {
            EStructuralFeature name = element.eClass().getEStructuralFeature("name");
            if (name instanceof EAttribute text && text.getEType().getInstanceClass() == String.class && named.add(element.eClass())) {
                Object before = element.eGet(name);
                element.eSet(name, before + " renamed");
                assertEquals(1, edits().size(), () -> element + ": " + edits());
                element.eSet(name, before);
            }
        }
        assertTrue(named.size() > 12, named.size() + " kinds");
    }

    @Test
    void aSourceThatNamesNoFieldIsAChangeOfItsOwn() {
        other.getBuses().get(0).getSources().add(CommonFactory.eINSTANCE.createSourceNote());
        assertEquals(1, edits().size());
    }

    /** What was imported has more digits than anybody reads; those are told only where nothing else tells two values apart. */
    @Test
    void numbersReadAsTheirFieldsShowThem() {
        study.getSite().setElevationM(100);
        other.getSite().setElevationM(123.456789);
        assertEquals(List.of("328.08 ft", "405.04 ft"), differences().get(0).values());
        study.getSite().setElevationM(123.4567);
        assertEquals(2, differences().get(0).values().stream().distinct().count());
    }
}
