package org.amberyard.core.tariff;

/**
 * A price of a charge and when it applies.
 *
 * @param period season, kinds of days and hours
 * @param years years of the contract
 * @param prices price, by blocks
 */
public record ChargeRate(TariffPeriod period, ContractYears years, BlockPrices prices) {

    /** One price in a period of every year. */
    public static ChargeRate of(TariffPeriod period, double price) {
        return new ChargeRate(period, ContractYears.ALL, BlockPrices.flat(price));
    }

    /** True when the rate has hours in a month of a contract year. */
    public boolean inForce(int month, int contractYear) {
        return period.months().contains(month) && years.contains(contractYear);
    }
}
