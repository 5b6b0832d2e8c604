package org.amberyard.core.tariff;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.math.Checks;

/**
 * A tariff of an electricity supplier.
 *
 * @param name name of the rate
 * @param customer charges per month or day
 * @param minimum least charges of a month
 * @param energy energy charges; together they should cover each hour once, see {@link TariffCheck}
 * @param demand demand charges
 * @param riders surcharges and credits
 * @param taxes taxes in order; a later one may fall on earlier ones
 * @param lossFactor factor on metered energy and demand where the meter is not at the point of delivery, 1 for none
 */
public record Tariff(String name, List<FixedCharge> customer, MinimumBill minimum, List<EnergyCharge> energy,
        List<DemandCharge> demand, Riders riders, List<ShareCharge> taxes, double lossFactor) {

    public Tariff {
        customer = List.copyOf(customer);
        energy = List.copyOf(energy);
        demand = List.copyOf(demand);
        taxes = List.copyOf(taxes);
        Checks.positive("loss factor of " + name, lossFactor);
    }

    /**
     * One energy price at all hours, one demand charge on each month's highest demand, a monthly charge and taxes.
     *
     * @param name name of the rate
     * @param monthlyCharge customer charge, money/month
     * @param energyPricePerKwh energy price, money/kWh
     * @param riderPerKwh riders, money/kWh
     * @param demandPricePerKw demand price, money/kW/month
     * @param taxShare taxes as a share of the bill
     */
    public static Tariff flat(String name, double monthlyCharge, double energyPricePerKwh, double riderPerKwh,
            double demandPricePerKw, double taxShare) {
        return new Tariff(name, List.of(FixedCharge.monthly("Customer charge", monthlyCharge)), MinimumBill.NONE,
                List.of(EnergyCharge.of("Energy", TariffPeriod.ALWAYS, energyPricePerKwh)),
                List.of(DemandCharge.of("Demand", TariffPeriod.ALWAYS, demandPricePerKw)),
                riderPerKwh == 0 ? Riders.NONE
                        : Riders.onEnergy(EnergyCharge.of("Riders", TariffPeriod.ALWAYS, riderPerKwh)),
                taxShare == 0 ? List.of() : List.of(ShareCharge.ofCharges("Taxes", taxShare)), 1);
    }

    /** Year of a contract from which the tariff stays the same. */
    public int settledYear() {
        Stream<ContractYears> fixed = Stream.of(customer, riders.fixed()).flatMap(List::stream).map(FixedCharge::years);
        return Stream.concat(rates().map(ChargeRate::years), fixed).mapToInt(ContractYears::settled).max().orElse(1);
    }

    /** Most blocks that a charge has. */
    public int mostBlocks() {
        return rates().mapToInt(r -> r.prices().blocks().size()).max().orElse(1);
    }

    private Stream<ChargeRate> rates() {
        Stream<EnergyCharge> onEnergy = Stream.concat(energy.stream(), riders.perKwh().stream());
        return Stream.concat(onEnergy.map(EnergyCharge::rates), onDemand().map(DemandCharge::rates)).flatMap(List::stream);
    }

    /** True when no part of a bill falls by drawing more: no minimum bill, no price below zero, no blocks that go by demand. */
    public boolean addsUp() {
        return minimum.amount() <= 0 && rates().allMatch(r -> !r.prices().byDemand()
                && r.prices().blocks().stream().allMatch(b -> b.price() >= 0));
    }

    /** Charges on demand, riders among them. */
    public Stream<DemandCharge> onDemand() {
        return Stream.concat(demand.stream(), riders.perKw().stream());
    }

    /** True when a charge on demand bills a share of the demands of earlier months. */
    public boolean remembers() {
        return onDemand().anyMatch(c -> c.ratchet().isPresent());
    }

    /**
     * What the tariff asks in a month.
     *
     * @param month month, 0 for January
     * @param contractYear year of the contract, 1 for the first
     */
    public TariffMonth inForce(int month, int contractYear) {
        return new TariffMonth(this, month, contractYear);
    }
}
