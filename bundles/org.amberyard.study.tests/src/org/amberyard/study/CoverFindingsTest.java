package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.model.vehicles.VehicleType;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The example has 62 trips, driven by B21 and B22, and spares B19, B20, B23 and B24. */
class CoverFindingsTest {
    private Study study;
    private Plan staged;

    @BeforeEach
    void load() throws Exception {
        study = ExampleStudy.load();
        staged = study.getPlans().get(1);
    }

    private List<Finding> findings(String about) {
        return ResultFindings.of(study, ExampleStudy.evaluated(study)).stream().filter(f -> f.message().contains(about)).toList();
    }

    private VehicleType type(String name) {
        return study.getVehicleTypes().stream().filter(t -> t.getName().equals(name)).findFirst().orElseThrow();
    }

    /** Whatever a plan buys for some places is now of a type; null leaves them empty. */
    private void buy(VehicleType type, String... places) {
        for (Replacement step : staged.getReplacements()) {
            if (List.of(places).contains(step.getBus().getName())) {
                step.setNewType(type);
            }
        }
    }

    @Test
    void theExampleCoversEveryTripButManyOnlyWithAnEngine() {
        assertEquals(List.of(), findings("no bus can cover"));
        List<Finding> engines = findings("only buses with an engine can cover");
        assertTrue(engines.get(0).message().matches(
                "Plan “Electric in stages”: in 2040 only buses with an engine can cover \\d+ of 62 trips: T001, .* more\\."),
                engines.toString());
        assertTrue(engines.stream().noneMatch(f -> f.message().contains("Like for like")), engines.toString());
    }

    @Test
    void anElectricBusThatCannotDriveItsTripsIsNamedWithTheCause() {
        buy(type("Electric C 150"), "B22");
        List<Finding> given = findings("that is assigned");
        assertEquals(1, given.size());
        assertEquals(Severity.WARNING, given.get(0).severity());
        assertTrue(given.get(0).message().startsWith("Plan “Electric in stages”: in 2040 the electric bus that is "
                + "assigned cannot cover "), given.toString());
        assertTrue(given.get(0).message().contains("T010 (B22: not enough charge), "), given.toString());
        assertTrue(given.get(0).message().matches(".*; other buses can cover (\\d+) of them\\."), given.toString());
        assertEquals("T010", ((Trip) given.get(0).element()).getName());
    }

    @Test
    void aTripThatNobodyCanCoverIsNamed() {
        study.getTrips().get(1).setBodyType(BodyType.D);
        List<Finding> uncovered = findings("no bus can cover");
        assertEquals(3, uncovered.size(), "one for each plan");
        assertEquals("Plan “Like for like”: in 2040 no bus can cover 1 of 62 trips: T002 (B22: body type does not fit).",
                uncovered.get(0).message());
    }

    /** A trip asks for a body that only a bus bought in 2030 has. */
    @Test
    void yearsBeforeTheLastAreToldByThemselves() {
        assertEquals(List.of(), findings("before the last"));
        study.getTrips().get(1).setBodyType(BodyType.D);
        VehicleType wide = EcoreUtil.copy(type("Diesel C new"));
        wide.setName("Wide");
        wide.setBodyType(BodyType.D);
        study.getVehicleTypes().add(wide);
        Replacement late = PlansFactory.eINSTANCE.createReplacement();
        late.setBus(study.getBuses().stream().filter(b -> b.getName().equals("B22")).findFirst().orElseThrow());
        late.setYear(2030);
        late.setNewType(wide);
        staged.getReplacements().removeIf(r -> r.getBus() == late.getBus());
        staged.getReplacements().add(late);
        List<Finding> found = findings("before the last").stream().filter(f -> f.element() == staged).toList();
        assertEquals(List.of("Plan “Electric in stages”: no bus can cover some trips in 4 years before the last: 2026 (T002); 2027 (T002); "
                + "2028 (T002); +1."), found.stream().map(Finding::message).toList());
        assertEquals(Severity.WARNING, found.get(0).severity());
    }

    @Test
    void routesThatNoSpareCanDoAreNamedLongestFirst() {
        assertEquals(List.of(), findings("no spare"));
        study.getBuses().stream().filter(b -> List.of("B19", "B20", "B23").contains(b.getName()))
                .forEach(b -> b.setType(type("Gasoline A")));
        study.getPlans().forEach(p -> p.getReplacements().forEach(r -> r.setCascadeTo(null)));
        List<Finding> open = findings("no spare");
        assertEquals("Plan “Like for like”: in 2040 no spare can stand in on 14 of 18 routes: R14, R13, R12, R11 and 10 more.",
                open.get(0).message());
        assertEquals("B19", ((Bus) open.get(0).element()).getName());
    }
}
