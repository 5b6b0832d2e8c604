package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.audit.BillRecords;
import org.amberyard.core.depot.ChargeWindow;
import org.amberyard.core.depot.Port;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.yard.Metering;

/**
 * The yard's electric side.
 *
 * @param ports port types that can be bought; at least one
 * @param works site works that can be ordered
 * @param service electric service of today
 * @param window hours of the night in which buses may be charged
 * @param metering tariff and meter in use
 * @param alternatives other tariffs, for comparison
 * @param charging how the yard charges
 * @param bills bills of the meter of today, on which no plan rests
 */
public record DepotInput(List<Port> ports, List<SiteWork> works, ServiceInput service, ChargeWindow window,
        Metering metering, List<Metering> alternatives, ChargingRules charging, BillRecords bills) {

    /** A yard without bills. */
    public DepotInput(List<Port> ports, List<SiteWork> works, ServiceInput service, ChargeWindow window, Metering metering,
            List<Metering> alternatives, ChargingRules charging) {
        this(ports, works, service, window, metering, alternatives, charging, BillRecords.NONE);
    }

    /** The same yard with other bills. */
    DepotInput billed(BillRecords other) {
        return new DepotInput(ports, works, service, window, metering, alternatives, charging, other);
    }

    /**
     * A work bought once and shared.
     *
     * @param name name
     * @param price base-date money
     * @param lifeYears life over which it loses its value
     * @param upgrade the service that it leaves behind, where it changes it
     */
    public record SiteWork(String name, double price, double lifeYears, Optional<Upgrade> upgrade) {

        /** A work that leaves the service as it is. */
        public SiteWork(String name, double price, double lifeYears) {
            this(name, price, lifeYears, Optional.empty());
        }
    }

    /**
     * A larger electric service.
     *
     * @param transformerKva rating of the transformer, kVA
     * @param breakerA rating of the main breaker, A
     * @param leadMonths time from order to use, months
     */
    public record Upgrade(double transformerKva, double breakerA, double leadMonths) {
        private static final double MONTHS = 12;

        /** Year from whose start it is in service when ordered at the start of a year; a year begun counts whole. */
        int inServiceYear(int orderYear) {
            return orderYear + leadYears();
        }

        /** Latest year at whose start it must be ordered to be in service from the start of a year. */
        int orderYear(int inServiceYear) {
            return inServiceYear - leadYears();
        }

        private int leadYears() {
            return (int) Math.ceil(leadMonths / MONTHS);
        }
    }

    public DepotInput {
        ports = List.copyOf(ports);
        works = List.copyOf(works);
        alternatives = List.copyOf(alternatives);
    }

    /** Energy into the batteries over energy at the meter, mean of the port types on offer. */
    double meanEfficiency() {
        return ports.stream().mapToDouble(Port::efficiency).average().orElseThrow();
    }
}
