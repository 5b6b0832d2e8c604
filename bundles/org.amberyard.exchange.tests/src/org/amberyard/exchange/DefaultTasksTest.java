package org.amberyard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.model.common.Quality;
import org.amberyard.model.fleet.MaintenanceTask;
import org.amberyard.model.fleet.Powertrain;
import org.amberyard.model.fleet.Skill;
import org.amberyard.model.fleet.UpkeepCause;
import org.junit.jupiter.api.Test;

class DefaultTasksTest {
    private final List<MaintenanceTask> tasks = DefaultTasks.all();

    private Set<UpkeepCause> causes(Powertrain powertrain, String body) {
        return tasks.stream().filter(t -> t.getPowertrain() == powertrain && t.getBodyTypes().contains(body))
                .map(MaintenanceTask::getCause).collect(Collectors.toCollection(() -> EnumSet.noneOf(UpkeepCause.class)));
    }

    @Test
    void everyTaskSaysThatItIsAssumed() {
        assertTrue(tasks.size() > 40);
        for (MaintenanceTask task : tasks) {
            assertEquals(Quality.ASSUMED, task.getSources().get(0).getQuality(), task.getName());
            assertEquals("common practice, no source", task.getSources().get(0).getCitation(), task.getName());
        }
    }

    @Test
    void anElectricBusHasNoOilFiltersOrExhaust() {
        for (String body : List.of("A", "C")) {
            assertEquals(EnumSet.of(UpkeepCause.HIGH_VOLTAGE, UpkeepCause.COOLING, UpkeepCause.TRANSMISSION),
                    causes(Powertrain.ELECTRIC, body));
            assertTrue(causes(Powertrain.ENGINE, body).contains(UpkeepCause.ENGINE));
            assertTrue(causes(Powertrain.DIESEL, body).contains(UpkeepCause.EXHAUST));
        }
    }

    @Test
    void highVoltageIsForThoseWhoAreTrained() {
        tasks.stream().filter(t -> t.getCause() == UpkeepCause.HIGH_VOLTAGE)
                .forEach(t -> assertEquals(Skill.HIGH_VOLTAGE, t.getSkill(), t.getName()));
    }

    @Test
    void eachCallGivesFreshTasks() {
        assertNotSame(tasks.get(0), DefaultTasks.all().get(0));
    }
}
