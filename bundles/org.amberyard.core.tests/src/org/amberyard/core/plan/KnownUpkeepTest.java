package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.amberyard.core.duty.DutyTable;
import org.junit.jupiter.api.Test;

class KnownUpkeepTest {
    private final StudyInput study = TinyDistrict.study();

    private StudyResult evaluated() {
        return StudyEvaluation.of(study, DutyTable.of(study.duty()));
    }

    @Test
    void theUpkeepOfAFleetIsFoundOnce() {
        StudyResult result = evaluated();
        FleetHistory electric = result.plans().get(1).fleet();
        KnownUpkeep known = new KnownUpkeep();
        List<UpkeepYear> found = known.of(study, electric, result.figures());
        assertEquals(FleetUpkeep.of(study, electric, result.figures()), found);
        assertSame(found, known.of(study, evaluated().plans().get(1).fleet(), result.figures()), "a fleet that drives alike");
        List<UpkeepYear> baseline = known.of(study, result.baseline().fleet(), result.figures());
        assertNotSame(found, baseline);
        assertEquals(FleetUpkeep.of(study, result.baseline().fleet(), result.figures()), baseline);
    }
}
