package org.amberyard.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.consumption.LogEntry;
import org.amberyard.core.duty.MeasuredUse;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.fleet.LogMonth;
import org.amberyard.model.routes.Route;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.site.Site;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;

/** Compiles consumption logs. */
final class LogCompiler {
    private LogCompiler() {
    }

    /** What was measured on routes. */
    static List<MeasuredUse> measured(Study study, Places<VehicleType> types, Places<Route> routes) {
        return study.getConsumptionLogs().stream().filter(l -> l.getRoute() != null)
                .map(l -> new MeasuredUse(routes.of(l.getRoute()), types.of(l.getType()), month(l), outside(l),
                        l.getDistanceKm(), l.getType() instanceof ElectricType ? l.getEnergyKwh() : l.getFuelL()))
                .toList();
    }

    /**
     * A log as the fit of a curve takes it; empty when distance or energy is missing, or when nothing tells the temperature.
     * Where it was not measured, the middle between the mean low and the mean high of the month stands in for it.
     */
    static Optional<LogEntry> entry(ConsumptionLog log, Site site) {
        OptionalDouble outsideC = outside(log);
        OptionalDouble knownC = outsideC.isPresent() ? outsideC : monthMean(log, site);
        boolean complete = log.getDistanceKm() > 0 && log.getEnergyKwh() > 0 && log.getHours() >= 0;
        return complete && knownC.isPresent()
                ? Optional.of(new LogEntry(log.getDistanceKm(), log.getHours(), log.getEnergyKwh(), knownC.getAsDouble()))
                : Optional.empty();
    }

    private static OptionalInt month(ConsumptionLog log) {
        return log.getMonth() == LogMonth.NOT_TOLD ? OptionalInt.empty() : OptionalInt.of(log.getMonth().getValue() - 1);
    }

    private static OptionalDouble outside(ConsumptionLog log) {
        return log.getOutsideC() == null ? OptionalDouble.empty() : OptionalDouble.of(log.getOutsideC());
    }

    private static OptionalDouble monthMean(ConsumptionLog log, Site site) {
        OptionalInt month = month(log);
        if (month.isEmpty() || site == null) {
            return OptionalDouble.empty();
        }
        return site.getClimate().stream().filter(c -> c.getMonth().getValue() == month.getAsInt()).findFirst()
                .map(LogCompiler::mean).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble mean(MonthClimate month) {
        return OptionalDouble.of((month.getMeanLowC() + month.getMeanHighC()) / 2);
    }
}
