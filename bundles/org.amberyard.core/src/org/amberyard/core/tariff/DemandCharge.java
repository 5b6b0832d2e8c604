package org.amberyard.core.tariff;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.math.Checks;

/**
 * A price on the highest demand of certain hours of the month. The demand is the mean of a step of the metered load, so the
 * load should come in steps as long as the demand interval of the tariff.
 *
 * @param name name on the bill
 * @param rates prices by season, hours and contract year; within a month they must agree on the price
 * @param minimumKw demand billed at least in every month in which the charge is in force, kW
 * @param ratchet memory of earlier demands
 */
public record DemandCharge(String name, List<ChargeRate> rates, double minimumKw, Optional<Ratchet> ratchet) {

    /**
     * @throws IllegalArgumentException when prices of a month differ or blocks depend on the demand that they bill
     */
    public DemandCharge {
        rates = List.copyOf(rates);
        Checks.notNegative("minimum demand of " + name, minimumKw);
        ChargeTerms.requireOnePrice(name, rates);
        if (rates.stream().anyMatch(r -> r.prices().byDemand())) {
            throw new IllegalArgumentException(name + " has blocks per kW but a demand charge must have blocks of kW");
        }
    }

    /** One price in a period, without minimum or ratchet. */
    public static DemandCharge of(String name, TariffPeriod period, double pricePerKw) {
        return new DemandCharge(name, List.of(ChargeRate.of(period, pricePerKw)), 0, Optional.empty());
    }
}
