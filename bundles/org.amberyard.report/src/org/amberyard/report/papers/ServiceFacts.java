package org.amberyard.report.papers;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.PortType;

/**
 * What a utility must know of a yard's service and no calculation needs; any text may be empty.
 *
 * @param address street address of the yard
 * @param utility utility
 * @param account account number
 * @param meter number of the meter
 * @param peakDate date of the building peak
 * @param loadManagement listed load-management system
 * @param setPointKw power to which it holds charging, kW; zero when not set
 * @param supplies how ports are supplied, by the name of their type
 */
record ServiceFacts(String address, String utility, String account, String meter, String peakDate, String loadManagement,
        double setPointKw, Map<String, Supply> supplies) {
    private static final int THREE = 3;
    /** Nominal voltages that differ by less are one, as 230 and 240 V or 460 and 480 V; common practice, no source. */
    private static final double SAME_VOLTAGE = 0.05;

    /**
     * How a port is supplied.
     *
     * @param phases 1 or 3; zero when not known
     * @param volts voltage between conductors, V; zero when not known
     * @param powerFactor power factor at full power; zero when not known
     */
    record Supply(int phases, double volts, double powerFactor) {
        /** Apparent power, kVA; empty where the power factor is not known. */
        OptionalDouble kva(double kw) {
            return powerFactor > 0 ? OptionalDouble.of(kw / powerFactor) : OptionalDouble.empty();
        }

        /**
         * True where a three-phase service gives the voltage as it is, between conductors or, to one phase, from conductor to
         * neutral; also where it is not known.
         */
        boolean fits(double serviceVolts) {
            return volts <= 0 || phases <= 0 || isNear(serviceVolts) || phases == 1 && isNear(serviceVolts / Math.sqrt(THREE));
        }

        private boolean isNear(double other) {
            return Math.abs(volts - other) <= SAME_VOLTAGE * other;
        }

        /** Current of a conductor at a power, A; empty where something is not known. */
        OptionalDouble amps(double kw) {
            boolean known = phases > 0 && volts > 0 && powerFactor > 0;
            return known ? OptionalDouble.of(1000 * kw / (volts * powerFactor * (phases == THREE ? Math.sqrt(THREE) : 1)))
                    : OptionalDouble.empty();
        }
    }

    static ServiceFacts of(Depot depot) {
        Map<String, Supply> supplies = new LinkedHashMap<>();
        for (PortType type : depot.getPortTypes()) {
            supplies.put(type.getName(), new Supply(type.getSupplyPhases(), type.getSupplyVoltageV(), type.getSupplyPowerFactor()));
        }
        return new ServiceFacts(text(depot.getServiceAddress()), text(depot.getUtility()), text(depot.getUtilityAccount()),
                text(depot.getMeterNumber()), text(depot.getBuildingPeakDate()), SourceWords.of(text(depot.getLoadManagement())),
                depot.getLoadManagementKw(), supplies);
    }

    private static String text(String value) {
        return value == null ? "" : value.strip();
    }
}
