package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.model.common.Quality;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Logs of the example's demonstration bus, with invented days, buses and sources. */
class LogChoiceTest {
    private Study study;
    private ElectricType type;
    private List<ConsumptionLog> logs;

    @BeforeEach
    void load() throws Exception {
        study = ExampleStudy.load();
        type = CurveLogs.typesWithLogs(study).get(0);
        logs = study.getConsumptionLogs().stream().filter(l -> l.getType() == type).toList();
        logs.get(0).setDate("2025-09-08");
        logs.get(1).setDate("2025-09-22");
        logs.get(2).setDate("2025-10-06");
    }

    private List<ConsumptionLog> taken(LogChoice choice) {
        CurveLogs chosen = CurveLogs.of(study, type, choice);
        assertEquals(logs.size(), chosen.used().size() + chosen.leftOut().size() + chosen.notChosen().size());
        return chosen.used();
    }

    private static LogChoice days(String from, String until) {
        return new LogChoice(Optional.ofNullable(from).map(LocalDate::parse), Optional.ofNullable(until).map(LocalDate::parse), Optional.empty(),
                Optional.empty());
    }

    @Test
    void daysLeaveOthersAside() {
        assertEquals(logs.subList(1, 2), taken(days("2025-09-09", "2025-10-05")));
        assertEquals(logs.subList(0, 3), taken(days(null, "2025-12-31")));
        assertEquals(logs, taken(LogChoice.ALL));
    }

    @Test
    void sourceAndBusLeaveOthersAside() {
        Bus bus = study.getBuses().get(0);
        logs.get(2).setBus(bus);
        SourceNotes.put(logs.get(1), SourceNotes.EVERY_FIELD, Quality.MEASURED, "telematics.csv");
        assertEquals(logs.subList(2, 3), taken(new LogChoice(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(bus))));
        assertEquals(logs.subList(1, 2), taken(new LogChoice(Optional.empty(), Optional.empty(), Optional.of("telematics.csv"), Optional.empty())));
    }

    /** Six logs of one bus take a tenth less than the others: what the common curve misses of them lies below it. */
    @Test
    void aBusToOneSideOfTheCurveIsNamed() {
        Bus frugal = study.getBuses().get(0);
        Bus other = study.getBuses().get(1);
        for (int i = 0; i < logs.size(); i++) {
            boolean first = i % 2 == 0;
            logs.get(i).setBus(first ? frugal : other);
            logs.get(i).setEnergyKwh(logs.get(i).getEnergyKwh() * (first ? 0.9 : 1.1));
        }
        List<String> words = CurveWords.of(CurveLogs.of(study, type).fit(CurveFitting.settings(type, OptionalDouble.empty())));
        String start = "Warning: the logs of bus " + frugal.getName() + " lie to one side of the curve: 0 of 8 above it, ";
        assertTrue(words.stream().anyMatch(w -> w.startsWith(start) && w.contains("% less on average")), words.toString());
    }

    @Test
    void whatWasNotChosenIsCounted() {
        List<String> words = CurveWords.of(CurveLogs.of(study, type, days("2025-09-09", null)).fit(CurveFitting.settings(type, OptionalDouble.empty())));
        assertEquals("Logs of the type that were not chosen: " + (logs.size() - 2) + ".", words.get(words.size() - 1));
    }
}
