package org.amberyard.model.validation;

import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.HeatSource;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.eclipse.emf.ecore.EAttribute;

/** A consumption log tells the kind of energy that its vehicle type takes, and a plausible amount. */
final class LogEnergyRule implements Rule {
    private static final double LEAST_KWH_PER_KM = 0.3;
    private static final double MOST_KWH_PER_KM = 3;
    private static final double LEAST_KM_PER_L = 0.6;
    private static final double MOST_KM_PER_L = 8;

    @Override
    public void check(Study study, Findings findings) {
        for (ConsumptionLog log : study.getConsumptionLogs()) {
            if (log.getType() instanceof ElectricType type) {
                checkElectric(log, type, findings);
            } else if (log.getType() instanceof CombustionType) {
                checkEngine(log, findings);
            }
        }
    }

    private static void checkElectric(ConsumptionLog log, ElectricType type, Findings findings) {
        requireEnergy(log, log.getEnergyKwh(), Literals.CONSUMPTION_LOG__ENERGY_KWH, findings);
        if (type.getHeatSource() != HeatSource.FUEL_FIRED) {
            requireNone(log, log.getFuelL(), Literals.CONSUMPTION_LOG__FUEL_L, findings);
        }
        double kwhPerKm = log.getEnergyKwh() / log.getDistanceKm();
        if (isImplausible(kwhPerKm, LEAST_KWH_PER_KM, MOST_KWH_PER_KM)) {
            warn(log, Literals.CONSUMPTION_LOG__ENERGY_KWH, VehiclesPackage.Literals.ELECTRIC_TYPE__CURVE_BASE_KWH_PER_KM,
                    kwhPerKm, findings);
        }
    }

    private static void checkEngine(ConsumptionLog log, Findings findings) {
        requireEnergy(log, log.getFuelL(), Literals.CONSUMPTION_LOG__FUEL_L, findings);
        requireNone(log, log.getEnergyKwh(), Literals.CONSUMPTION_LOG__ENERGY_KWH, findings);
        double kmPerL = log.getDistanceKm() / log.getFuelL();
        if (isImplausible(kmPerL, LEAST_KM_PER_L, MOST_KM_PER_L)) {
            warn(log, Literals.CONSUMPTION_LOG__FUEL_L, FleetPackage.Literals.BUS__MEASURED_KM_PER_L, kmPerL, findings);
        }
    }

    private static void requireEnergy(ConsumptionLog log, double amount, EAttribute field, Findings findings) {
        if (amount == 0) {
            findings.error(log, field, findings.fact(log, field) + "; enter what " + ElementNames.of(log.getType())
                    + " took, or delete the log.");
        }
    }

    private static void requireNone(ConsumptionLog log, double amount, EAttribute field, Findings findings) {
        if (amount > 0) {
            findings.error(log, field, findings.fact(log, field) + " but " + ElementNames.of(log.getType())
                    + " takes none; clear it or choose another vehicle type.");
        }
    }

    /** Missing figures are told by other rules. */
    private static boolean isImplausible(double value, double least, double most) {
        return value > 0 && Double.isFinite(value) && (value < least || value > most);
    }

    private static void warn(ConsumptionLog log, EAttribute field, EAttribute measure, double value, Findings findings) {
        findings.warning(log, field, "it comes to " + findings.value(log, measure, value)
                + ", which no school bus does; check energy and distance.");
    }
}
