package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

class StudyVersionTest {
    private final Study study = new ExamplePapers().study();
    private final String version = StudyVersion.of(study);

    @Test
    void aCopyHasTheSameVersion() {
        assertEquals(version, StudyVersion.of(EcoreUtil.copy(study)));
        assertEquals(12, version.length());
    }

    @Test
    void anyChangeGivesAnother() {
        study.getBuses().get(3).setOdometerKm(study.getBuses().get(3).getOdometerKm() + 1);
        String moved = StudyVersion.of(study);
        assertNotEquals(version, moved);
        study.getBuses().get(3).setRoute(study.getRoutes().get(0));
        String rerouted = StudyVersion.of(study);
        assertNotEquals(moved, rerouted);
        study.getTraces().get(0).setDescription("another drive");
        assertNotEquals(rerouted, StudyVersion.of(study));
    }
}
