package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.fleet.MaintenanceTask;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class MaintenanceTaskRuleTest {
    private final SmallStudy small = new SmallStudy();
    private final MaintenanceTask task = FleetFactory.eINSTANCE.createMaintenanceTask();

    @BeforeEach
    void add() {
        task.setName("Oil");
        task.setEveryKm(16_000);
        small.study.getMaintenanceTasks().add(task);
    }

    @Test
    void aTaskThatIsRightIsLeftAlone() {
        task.setBodyTypes("AB");
        Said.of(small);
    }

    @Test
    void aTaskFallsDueAtSomeTime() {
        task.setEveryKm(0);
        Said.of(small, "ERROR: Maintenance task Oil: The task never falls due: its distance, time, hours, linings and distance to "
                + "failure are all zero; give at least one of them.");
        task.setFailureMeanKm(50_000);
        Said.of(small);
    }

    @Test
    void aReferenceMassNeedsADistance() {
        task.setEveryKm(0);
        task.setEveryMonths(12);
        task.setTyreReferenceKg(8400);
        Said.of(small, "ERROR: Maintenance task Oil: distance holds for mass is 8400 kg but the task has no distance that could "
                + "hold for it; give the distance.");
    }

    @Test
    void bodyTypesAreLetters() {
        task.setBodyTypes("A, C");
        Said.of(small, "ERROR: Maintenance task Oil: body types is A, C; allowed are the letters A, B, C and D without anything "
                + "between them, or nothing for all.");
    }
}
