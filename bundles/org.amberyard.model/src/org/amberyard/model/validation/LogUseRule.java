package org.amberyard.model.validation;

import java.time.LocalDate;
import java.util.Optional;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.fleet.LogMonth;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.IsoDay;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;

/** A consumption log can serve what it is for: the fit of a curve, or the calibration on a route. */
final class LogUseRule implements Rule {
    private static final double SLOWEST_KMH = 3;
    private static final double FASTEST_KMH = 110;

    @Override
    public void check(Study study, Findings findings) {
        for (ConsumptionLog log : study.getConsumptionLogs()) {
            checkTemperature(log, findings);
            checkSpeed(log, findings);
            checkRoute(log, findings);
            checkDay(log, findings);
        }
    }

    private static void checkTemperature(ConsumptionLog log, Findings findings) {
        boolean told = log.getOutsideC() != null || log.getMonth() != LogMonth.NOT_TOLD;
        if (log.getType() instanceof ElectricType && !told) {
            findings.warning(log, Literals.CONSUMPTION_LOG__OUTSIDE_C,
                    "it tells neither outside temperature nor month, so it cannot serve a consumption curve; enter one.");
        }
    }

    private static void checkSpeed(ConsumptionLog log, Findings findings) {
        double speedKmh = log.getDistanceKm() / log.getHours();
        if (log.getHours() > 0 && log.getDistanceKm() > 0 && (speedKmh < SLOWEST_KMH || speedKmh > FASTEST_KMH)) {
            findings.warning(log, Literals.CONSUMPTION_LOG__HOURS, findings.fact(log, Literals.CONSUMPTION_LOG__HOURS)
                    + " for " + findings.value(log, Literals.CONSUMPTION_LOG__DISTANCE_KM) + ", a mean speed of "
                    + findings.value(log, RoutesPackage.Literals.RUN__TOP_SPEED_KMH, speedKmh) + "; check both.");
        }
    }

    private static void checkRoute(ConsumptionLog log, Findings findings) {
        if (log.getRoute() != null && log.getType() != null
                && log.getRoute().getBodyType() != log.getType().getBodyType()) {
            findings.error(log, Literals.CONSUMPTION_LOG__ROUTE, "route " + ElementNames.of(log.getRoute())
                    + " needs a type " + log.getRoute().getBodyType().getLiteral() + " bus but "
                    + ElementNames.of(log.getType()) + " is a type " + log.getType().getBodyType().getLiteral()
                    + " bus; change one of them.");
        }
    }

    private static void checkDay(ConsumptionLog log, Findings findings) {
        if (log.getDate() == null || log.getDate().isBlank()) {
            return;
        }
        Optional<LocalDate> day = IsoDay.of(log.getDate());
        if (day.isEmpty()) {
            findings.error(log, Literals.CONSUMPTION_LOG__DATE, findings.fact(log, Literals.CONSUMPTION_LOG__DATE)
                    + "; it must be a day of the calendar as year, month and day, such as 2026-01-14.");
        } else if (log.getMonth() != LogMonth.NOT_TOLD && log.getMonth().getValue() != day.get().getMonthValue()) {
            findings.warning(log, Literals.CONSUMPTION_LOG__MONTH, findings.fact(log, Literals.CONSUMPTION_LOG__MONTH) + " but the day is "
                    + day.get() + "; mend one of the two.");
        }
    }
}
