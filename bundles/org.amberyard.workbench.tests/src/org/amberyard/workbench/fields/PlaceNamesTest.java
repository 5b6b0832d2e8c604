package org.amberyard.workbench.fields;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.whatif.WhatifPackage;
import org.junit.jupiter.api.Test;

class PlaceNamesTest {
    private static final String EVERY = "* (every one)";
    private final Study study = StudyFactory.eINSTANCE.createStudy();

    private void addBus(String name) {
        Bus bus = FleetFactory.eINSTANCE.createBus();
        bus.setName(name);
        study.getBuses().add(bus);
    }

    /** No name of an element is taken for all elements, not even that which says so. */
    @Test
    void anElementThatIsCalledEveryOneIsThatElement() throws FieldRefusal {
        PlaceNames names = PlaceNames.of(WhatifPackage.Literals.UNCERTAIN_INPUT__ELEMENT).orElseThrow();
        assertEquals("every one", names.stored("Bus", " every one"));
        assertEquals("every one", names.shown(null, "every one"));
        assertEquals(InputPlace.EVERY, names.stored("Bus", "*"));
        assertEquals(InputPlace.EVERY, names.stored("Bus", EVERY));
        assertEquals(EVERY, names.shown(null, InputPlace.EVERY));
    }

    @Test
    void elementsOfTheSameNameAreOfferedWithTheirOwners() {
        List.of("B1", "B2", "B1").forEach(this::addBus);
        study.setName("Yard");
        assertEquals(List.of(EVERY, "Yard / B1", "B2"), new PlaceOffers(study).elements(FleetPackage.Literals.BUS, EVERY));
    }

    @Test
    void manyElementsAreOfferedAtOnce() {
        IntStream.range(0, 60_000).forEach(i -> addBus("B" + i));
        assertTimeoutPreemptively(Duration.ofMinutes(1), () -> assertEquals(60_001, new PlaceOffers(study).elements(FleetPackage.Literals.BUS, EVERY).size()));
    }
}
