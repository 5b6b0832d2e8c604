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
 * @param middayCharging true when buses at the yard between runs are plugged in
 */
public record DepotInput(List<Port> ports, List<SiteWork> works, TariffInput tariff, ServiceInput service,
        ChargeWindow window, boolean middayCharging) {

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

    /** Power into the battery at the port type that charges this vehicle type fastest, kW. */
    public double fastestBatteryKw(VehicleTypeInput type) {
        return ports.stream()
                .mapToDouble(p -> p.batteryKw(p.direct() ? type.dcAcceptanceKw() : type.acAcceptanceKw()))
                .max().orElse(0);
    }

    /** Power into the battery at the best AC port, where there is one, else at the best DC port, kW. */
    public double everyBusBatteryKw(VehicleTypeInput type) {
        return ports.stream().filter(p -> !p.direct()).mapToDouble(p -> p.batteryKw(type.acAcceptanceKw())).max()
                .orElseGet(() -> fastestBatteryKw(type));
    }
}
