package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.depot.ChargeWindow;
import org.amberyard.core.depot.Port;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.depot.TariffInput;

/**
 * The yard's electric side.
 *
 * @param ports port types that can be bought; at least one
 * @param works site works that can be ordered
 * @param tariff tariff of the charging meter
 * @param service electric service
 * @param window hours of overnight charging
 */
public record DepotInput(List<Port> ports, List<SiteWork> works, TariffInput tariff, ServiceInput service,
        ChargeWindow window) {

    /**
     * A work bought once and shared.
     *
     * @param name name
     * @param price base-date money
     * @param lifeYears life over which it loses its value
     */
    public record SiteWork(String name, double price, double lifeYears) {
    }

    public DepotInput {
        ports = List.copyOf(ports);
        works = List.copyOf(works);
    }

    /**
     * Power into the battery that every bus of a type can count on, kW: that of the best AC port among some port types,
     * else, where there is none or the bus does not take AC, of the best DC port. DC ports are too few to count on.
     */
    public static double batteryKw(List<Port> ports, VehicleTypeInput type) {
        double alternating = best(ports, false, type.acAcceptanceKw());
        return alternating > 0 ? alternating : best(ports, true, type.dcAcceptanceKw());
    }

    private static double best(List<Port> ports, boolean direct, double acceptanceKw) {
        return ports.stream().filter(p -> p.direct() == direct).mapToDouble(p -> p.batteryKw(acceptanceKw)).max().orElse(0);
    }
}
