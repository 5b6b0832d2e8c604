package org.amberyard.core.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.charging.PortUnit;
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
        List<Port> bought = purchases.stream().filter(p -> p.count() > 0 && p.year() <= year)
                .map(p -> depot.ports().get(p.port())).toList();
        return type.countedKw(bought.isEmpty() ? depot.ports() : bought);
    }

    /** Number of ports in a year. */
    public int count(int year) {
        return purchases.stream().filter(p -> p.year() <= year).mapToInt(PlanInput.PortPurchase::count).sum();
    }

    /** Number of ports of each type in a year, by place in the list of types. */
    Map<Integer, Integer> counts(int year) {
        Map<Integer, Integer> counts = new TreeMap<>();
        purchases.stream().filter(p -> p.year() <= year).forEach(p -> counts.merge(p.port(), p.count(), Integer::sum));
        return counts;
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

    /** The ports of a year, in the order in which they were bought. */
    public List<PortUnit> units(int year) {
        return purchases.stream().filter(p -> p.year() <= year).sorted(Comparator.comparingInt(PlanInput.PortPurchase::year))
                .flatMap(p -> PortUnit.of(depot.ports().get(p.port()), depot.ports().get(p.port()).plugs(), p.count()).stream())
                .toList();
    }

    /** Year of the first port; the first year of the study where there is none. */
    public int firstYear() {
        return purchases.stream().filter(p -> p.count() > 0).mapToInt(PlanInput.PortPurchase::year).min().orElse(0);
    }
}
