package org.amberyard.core.tariff;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.units.MonthNames;

/** What a tariff asks in one month of a contract year. */
public final class TariffMonth {
    private final Tariff tariff;
    private final int month;
    private final int contractYear;
    private final List<ChargeTerms> energy;
    private final List<DemandTerms> demand;
    private final List<ChargeTerms> energyRiders;
    private final List<DemandTerms> demandRiders;

    TariffMonth(Tariff tariff, int month, int contractYear) {
        this.tariff = tariff;
        this.month = month;
        this.contractYear = contractYear;
        energy = energy(tariff.energy());
        demand = demand(tariff.demand());
        energyRiders = energy(tariff.riders().perKwh());
        demandRiders = demand(tariff.riders().perKw());
    }

    private List<ChargeTerms> energy(List<EnergyCharge> charges) {
        return charges.stream().flatMap(c -> ChargeTerms.of(c.name(), c.rates(), month, contractYear).stream()).toList();
    }

    private List<DemandTerms> demand(List<DemandCharge> charges) {
        return charges.stream().flatMap(c -> DemandTerms.of(c, month, contractYear).stream()).toList();
    }

    /**
     * The bill of a metered month.
     *
     * @throws IllegalArgumentException when another month was metered, or the history does not end just before it
     */
    public Bill bill(MeterMonth metered, PeakHistory history, LineRounding rounding) {
        requireJustBefore(history, metered);
        BillSheet sheet = charges(metered, history, 1, rounding);
        sheet.close(tariff, tariff.minimum());
        return new Bill(month, contractYear, sheet.lines());
    }

    /**
     * The charges of a bill before percentages, minimum and taxes.
     *
     * @param months how many months are charged, of what is asked by the month
     * @throws IllegalArgumentException when another month was metered
     */
    BillSheet charges(MeterMonth metered, PeakHistory history, double months, LineRounding rounding) {
        requireMonth(metered);
        BillSheet sheet = new BillSheet(metered, history, tariff.lossFactor(), months, rounding);
        fixed(tariff.customer(), BillComponent.CUSTOMER, sheet);
        double billedKw = billedKw(metered, history);
        energy.forEach(c -> sheet.energy(BillComponent.ENERGY, c, billedKw));
        demand.forEach(c -> sheet.demand(BillComponent.DEMAND, c));
        energyRiders.forEach(c -> sheet.energy(BillComponent.RIDER, c, billedKw));
        demandRiders.forEach(c -> sheet.demand(BillComponent.RIDER, c));
        fixed(tariff.riders().fixed(), BillComponent.RIDER, sheet);
        return sheet;
    }

    /** True when another month of the same tariff asks the same in the same hours. */
    boolean asks(TariffMonth other) {
        return fixed(tariff.customer()).equals(other.fixed(tariff.customer()))
                && fixed(tariff.riders().fixed()).equals(other.fixed(tariff.riders().fixed())) && sameEnergy(energy, other.energy)
                && sameEnergy(energyRiders, other.energyRiders)
                && sameDemand(demand, other.demand) && sameDemand(demandRiders, other.demandRiders);
    }

    private static boolean sameEnergy(List<ChargeTerms> one, List<ChargeTerms> other) {
        return one.size() == other.size()
                && IntStream.range(0, one.size()).allMatch(c -> one.get(c).sameAs(other.get(c)));
    }

    private static boolean sameDemand(List<DemandTerms> one, List<DemandTerms> other) {
        return sameEnergy(one.stream().map(DemandTerms::charge).toList(), other.stream().map(DemandTerms::charge).toList());
    }

    /** Demand by which blocks per kW go, kW. */
    double billedKw(MeterMonth metered, PeakHistory history) {
        if (Stream.concat(energy.stream(), energyRiders.stream()).noneMatch(c -> c.prices().byDemand())) {
            return 0;
        }
        return demand.stream().mapToDouble(d -> d.billed(metered, history, tariff.lossFactor()).kw()).max()
                .orElseGet(() -> tariff.lossFactor() * metered.peakKw());
    }

    private void fixed(List<FixedCharge> charges, BillComponent component, BillSheet sheet) {
        fixed(charges).forEach(c -> sheet.fixed(component, c));
    }

    /** Those in force in the contract year. */
    private List<FixedCharge> fixed(List<FixedCharge> charges) {
        return charges.stream().filter(c -> c.years().contains(contractYear)).toList();
    }

    private void requireMonth(MeterMonth metered) {
        if (metered.month() != month) {
            throw new IllegalArgumentException("metered month is " + MonthNames.full(metered.month())
                    + " but the terms are of "
                    + MonthNames.full(month));
        }
    }

    private static void requireJustBefore(PeakHistory history, MeterMonth metered) {
        if (!history.months().isEmpty()) {
            MeterMonth.requireConsecutive(List.of(history.months().get(history.months().size() - 1), metered));
        }
    }

    Tariff tariff() {
        return tariff;
    }

    /** Energy charges and riders on energy. */
    List<ChargeTerms> energyTerms(BillComponent component) {
        return component == BillComponent.RIDER ? energyRiders : energy;
    }

    /** Demand charges and riders on demand. */
    List<DemandTerms> demandTerms(BillComponent component) {
        return component == BillComponent.RIDER ? demandRiders : demand;
    }
}
