package org.amberyard.core.depot;

/**
 * One energy price at all hours, one demand charge on each month's highest demand, a monthly charge and taxes.
 *
 * @param monthlyCharge customer charge, money/month
 * @param energyPricePerKwh energy price, money/kWh
 * @param riderPerKwh riders, money/kWh
 * @param demandPricePerKw demand price, money/kW/month
 * @param taxShare taxes as a share of the bill
 */
public record FlatTariff(double monthlyCharge, double energyPricePerKwh, double riderPerKwh, double demandPricePerKw,
        double taxShare) implements TariffInput {
    private static final int MONTHS = 12;

    @Override
    public BillParts year(double energyKwh, double sumOfMonthlyPeaksKw) {
        double taxed = 1 + taxShare;
        return new BillParts(taxed * energyKwh * pricePerKwh(), taxed * sumOfMonthlyPeaksKw * demandPricePerKw,
                taxed * MONTHS * monthlyCharge);
    }

    private double pricePerKwh() {
        return energyPricePerKwh + riderPerKwh;
    }
}
