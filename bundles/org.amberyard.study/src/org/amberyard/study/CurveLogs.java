package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.consumption.CurveFit;
import org.amberyard.core.consumption.FitSettings;
import org.amberyard.core.consumption.LogEntry;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;

/**
 * The logs of one electric type, read from a study.
 *
 * @param study the study
 * @param type the electric type
 * @param used logs that can be fitted, in the order of the study
 * @param entries what they say, one for each
 * @param leftOut logs of the type that lack distance, energy or temperature
 * @param notChosen logs of the type that the choice leaves aside
 */
public record CurveLogs(Study study, ElectricType type, List<ConsumptionLog> used, List<LogEntry> entries,
        List<ConsumptionLog> leftOut, List<ConsumptionLog> notChosen) {

    public CurveLogs {
        used = List.copyOf(used);
        entries = List.copyOf(entries);
        leftOut = List.copyOf(leftOut);
        notChosen = List.copyOf(notChosen);
    }

    /** Electric types of which the study has logs, in the order of the study. */
    public static List<ElectricType> typesWithLogs(Study study) {
        return study.getVehicleTypes().stream().filter(ElectricType.class::isInstance).map(ElectricType.class::cast)
                .filter(t -> study.getConsumptionLogs().stream().anyMatch(l -> l.getType() == t)).toList();
    }

    /** Reads all logs of a type; to be called where the study may be read. */
    public static CurveLogs of(Study study, ElectricType type) {
        return of(study, type, LogChoice.ALL);
    }

    /** Reads the logs of a type that are chosen; to be called where the study may be read. */
    public static CurveLogs of(Study study, ElectricType type, LogChoice choice) {
        List<ConsumptionLog> used = new ArrayList<>();
        List<LogEntry> entries = new ArrayList<>();
        List<ConsumptionLog> leftOut = new ArrayList<>();
        List<ConsumptionLog> of = study.getConsumptionLogs().stream().filter(l -> l.getType() == type).toList();
        for (ConsumptionLog log : of.stream().filter(choice::takes).toList()) {
            Optional<LogEntry> entry = LogCompiler.entry(log, study.getSite());
            entry.ifPresent(entries::add);
            (entry.isPresent() ? used : leftOut).add(log);
        }
        return new CurveLogs(study, type, used, entries, leftOut, of.stream().filter(l -> !choice.takes(l)).toList());
    }

    /** Fits a curve; reads nothing of the study, so it may run anywhere. */
    public CurveFitting fit(FitSettings settings) {
        return new CurveFitting(this, CurveFit.of(entries, settings));
    }
}
