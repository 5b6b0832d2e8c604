package org.amberyard.core.tariff;

import java.util.List;

/**
 * Surcharges and credits beside the base rates, printed in this order.
 *
 * @param perKwh riders on energy; hours may be covered by several of them or by none
 * @param perKw riders on demand
 * @param fixed riders per month or day
 * @param shares riders that are a share of charges
 */
public record Riders(List<EnergyCharge> perKwh, List<DemandCharge> perKw, List<FixedCharge> fixed,
        List<ShareCharge> shares) {

    /** No rider. */
    public static final Riders NONE = new Riders(List.of(), List.of(), List.of(), List.of());

    public Riders {
        perKwh = List.copyOf(perKwh);
        perKw = List.copyOf(perKw);
        fixed = List.copyOf(fixed);
        shares = List.copyOf(shares);
    }

    /** Riders on energy only. */
    public static Riders onEnergy(EnergyCharge... riders) {
        return new Riders(List.of(riders), List.of(), List.of(), List.of());
    }
}
