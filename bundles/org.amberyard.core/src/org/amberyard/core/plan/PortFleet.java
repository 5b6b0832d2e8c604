package org.amberyard.core.plan;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.depot.Port;

/** The ports of a plan over the years. */
public final class PortFleet {
    private final DepotInput depot;
    private final List<PlanInput.PortPurchase> purchases;

    public PortFleet(DepotInput depot, List<PlanInput.PortPurchase> purchases) {
        this.depot = depot;
        this.purchases = List.copyOf(purchases);
    }

    /**
     * Power into the battery that every bus of a type can count on in a year, kW; judged by the port types on offer where
     * the plan has no port yet.
     */
    public double batteryKw(VehicleTypeInput type, int year) {
        List<Port> bought = purchases.stream().filter(p -> p.year() <= year).map(p -> depot.ports().get(p.port())).toList();
        return DepotInput.batteryKw(bought.isEmpty() ? depot.ports() : bought, type);
    }

    /** Number of ports in a year. */
    public int count(int year) {
        return purchases.stream().filter(p -> p.year() <= year).mapToInt(PlanInput.PortPurchase::count).sum();
    }

    /** Sum over the ports of a year of a figure of their type. */
    public double sum(int year, ToDoubleFunction<Port> figure) {
        return purchases.stream().filter(p -> p.year() <= year)
                .mapToDouble(p -> p.count() * figure.applyAsDouble(depot.ports().get(p.port()))).sum();
    }

    /** Power of all ports in a year, kW. */
    public double connectedKw(int year) {
        return sum(year, Port::powerKw);
    }

    /**
     * Energy into the batteries over energy at the meter in a year: the mean of the ports, weighted by their power; the mean
     * of the port types on offer where the plan has no port yet.
     */
    public double efficiency(int year) {
        double connected = connectedKw(year);
        return connected > 0 ? sum(year, p -> p.powerKw() * p.efficiency()) / connected
                : depot.ports().stream().mapToDouble(Port::efficiency).average().orElseThrow(
                        () -> new IllegalArgumentException("The depot offers no port type"));
    }
}
