package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.amberyard.core.upkeep.Powertrain;
import org.amberyard.core.upkeep.Skill;
import org.amberyard.core.upkeep.UpkeepCause;
import org.amberyard.core.upkeep.UpkeepRules;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.fleet.MaintenanceTask;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class UpkeepCompilerTest {
    private Study study;

    @BeforeEach
    void load() throws StudyFileException {
        study = ExampleStudy.load();
    }

    @Test
    void zerosDoNotCount() {
        MaintenanceTask task = FleetFactory.eINSTANCE.createMaintenanceTask();
        task.setName("Coolant pump");
        task.setCause(org.amberyard.model.fleet.UpkeepCause.COOLING);
        task.setPowertrain(org.amberyard.model.fleet.Powertrain.ELECTRIC);
        task.setSkill(org.amberyard.model.fleet.Skill.HIGH_VOLTAGE);
        task.setEveryMonths(48);
        task.setLabourHours(3);
        study.getMaintenanceTasks().clear();
        study.getMaintenanceTasks().add(task);
        org.amberyard.core.upkeep.MaintenanceTask compiled = UpkeepCompiler.rules(study).tasks().get(0);
        assertEquals(48, compiled.trigger().everyMonths(), 0);
        assertEquals(Double.POSITIVE_INFINITY, compiled.trigger().everyKm(), 0);
        assertTrue(compiled.failures().isEmpty() && compiled.tyres().isEmpty());
        assertEquals(UpkeepCause.COOLING, compiled.cause());
        assertEquals(Powertrain.ELECTRIC, compiled.scope().powertrain());
        assertEquals(Skill.HIGH_VOLTAGE, compiled.skill());
    }

    @Test
    void failuresTyresAndMeasuredCostAreKept() {
        MaintenanceTask task = FleetFactory.eINSTANCE.createMaintenanceTask();
        task.setName("Tyres");
        task.setEveryKm(70_000);
        task.setTyreReferenceKg(8400);
        task.setFailureMeanKm(90_000);
        task.setFailureShape(2);
        study.getMaintenanceTasks().clear();
        study.getMaintenanceTasks().add(task);
        study.getBuses().forEach(b -> b.setMeasuredUpkeepPerKm(0));
        study.getBuses().get(0).setMeasuredUpkeepPerKm(0.6);
        UpkeepRules rules = UpkeepCompiler.rules(study);
        assertEquals(2, rules.tasks().get(0).failures().orElseThrow().shape(), 0);
        assertEquals(8400, rules.tasks().get(0).tyres().orElseThrow().referenceKg(), 0);
        assertEquals(Map.of("B01", 0.6), rules.measuredPerKm());
    }
}
