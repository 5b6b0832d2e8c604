package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.depot.Port;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.duty.VehicleSpec;

/**
 * A vehicle type as a whole.
 *
 * @param spec physics
 * @param prices prices and life
 * @param acAcceptanceKw largest power taken from an AC port, kW; zero for an engine bus
 * @param dcAcceptanceKw largest power taken from a DC port, kW; zero for an engine bus
 * @param successor place in the list of types of the type that the rule buys next
 * @param deliveryMonths time from order to delivery, months
 */
public record VehicleTypeInput(VehicleSpec spec, VehiclePrices prices, double acAcceptanceKw, double dcAcceptanceKw,
        int successor, double deliveryMonths) {

    /** A type that is delivered when it is ordered. */
    public VehicleTypeInput(VehicleSpec spec, VehiclePrices prices, double acAcceptanceKw, double dcAcceptanceKw,
            int successor) {
        this(spec, prices, acAcceptanceKw, dcAcceptanceKw, successor, 0);
    }

    /** The same at the prices of another. */
    VehicleTypeInput at(VehiclePrices others) {
        return new VehicleTypeInput(spec, prices.at(others), acAcceptanceKw, dcAcceptanceKw, successor, deliveryMonths);
    }

    /** Name of the type. */
    public String name() {
        return spec.name();
    }

    /** Kind of its element as the model names it. */
    String kind() {
        return electric().isPresent() ? "ElectricType" : "CombustionType";
    }

    /** The electric physics, when it is an electric type. */
    public Optional<ElectricSpec> electric() {
        return spec instanceof ElectricSpec electric ? Optional.of(electric) : Optional.empty();
    }

    /** Power into the battery that every bus of the type can count on at some ports, kW. */
    public double countedKw(List<Port> ports) {
        return Port.countedKw(ports, acAcceptanceKw, dcAcceptanceKw);
    }

    /** The engine physics, when it is an engine type. */
    public Optional<EngineSpec> engine() {
        return spec instanceof EngineSpec engine ? Optional.of(engine) : Optional.empty();
    }
}
