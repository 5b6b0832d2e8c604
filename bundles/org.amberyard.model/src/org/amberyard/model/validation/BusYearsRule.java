package org.amberyard.model.validation;

import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.CombustionType;

/** The years of a bus agree with each other and with the study. */
final class BusYearsRule implements Rule {
    private static final int OLDEST_ENGINE_YEARS = 2;
    private static final int FIRST_FULL_YEAR = 1970;

    @Override
    public void check(Study study, Findings findings) {
        for (Bus bus : study.getBuses()) {
            if (bus.getType() instanceof CombustionType) {
                checkEngine(bus, findings);
            }
            if (study.getSettings() != null) {
                checkService(bus, study.getSettings().getBaseYear(), findings);
                checkRetirement(bus, study.getSettings().getBaseYear(), findings);
                checkHealth(bus, study.getSettings().getBaseYear(), findings);
            }
        }
    }

    private static void checkEngine(Bus bus, Findings findings) {
        int engine = bus.getEngineModelYear();
        int chassis = bus.getModelYear();
        String fact = findings.fact(bus, Literals.BUS__ENGINE_MODEL_YEAR);
        if (engine < FIRST_FULL_YEAR) {
            findings.warning(bus, Literals.BUS__ENGINE_MODEL_YEAR, fact + "; enter the year on the engine's label, all four "
                    + "digits.");
        } else if (engine > chassis) {
            findings.warning(bus, Literals.BUS__ENGINE_MODEL_YEAR, fact + ", newer than the chassis ("
                    + findings.value(bus, Literals.BUS__MODEL_YEAR) + "); check both, or note the engine's replacement.");
        } else if (engine < chassis - OLDEST_ENGINE_YEARS) {
            findings.warning(bus, Literals.BUS__ENGINE_MODEL_YEAR, fact + ", more than " + OLDEST_ENGINE_YEARS
                    + " years older than the chassis (" + findings.value(bus, Literals.BUS__MODEL_YEAR)
                    + "); check both.");
        }
    }

    private static void checkService(Bus bus, int baseYear, Findings findings) {
        if (bus.getInServiceYear() > baseYear && bus.getOdometerKm() > 0) {
            findings.error(bus, Literals.BUS__ODOMETER_KM, findings.fact(bus, Literals.BUS__ODOMETER_KM)
                    + ", but the fleet only grows by it, new, in " + bus.getInServiceYear() + "; it must be 0, or the bus in "
                    + "service since the base year " + baseYear + " or earlier.");
        }
    }

    private static void checkHealth(Bus bus, int baseYear, Findings findings) {
        int measured = bus.getMeasuredHealthYear();
        if (bus.getMeasuredHealth() > 0 && measured > 0 && (measured < bus.getInServiceYear() || measured > baseYear)) {
            findings.error(bus, Literals.BUS__MEASURED_HEALTH_YEAR, findings.fact(bus, Literals.BUS__MEASURED_HEALTH_YEAR)
                    + "; it must be from " + bus.getInServiceYear() + ", when the bus entered service, to the base year "
                    + baseYear + ".");
        }
        if (bus.getMeasuredHealth() > 0 && bus.getType() instanceof CombustionType) {
            findings.warning(bus, Literals.BUS__MEASURED_HEALTH,
                    findings.fact(bus, Literals.BUS__MEASURED_HEALTH) + ", but it has an engine; clear the field.");
        }
    }

    private static void checkRetirement(Bus bus, int baseYear, Findings findings) {
        int planned = bus.getPlannedRetirementYear();
        if (planned > 0 && planned < baseYear) {
            findings.info(bus, Literals.BUS__PLANNED_RETIREMENT_YEAR,
                    findings.fact(bus, Literals.BUS__PLANNED_RETIREMENT_YEAR) + ", before the base year " + baseYear
                            + ", so it is overdue from the start.");
        }
    }
}
