package org.amberyard.core.money;

/**
 * How amounts are stated and discounted.
 *
 * @param rates real discount rate and inflation
 * @param basis money in which yearly amounts are stated
 * @param midYear true when running costs fall in the middle of the year instead of at its end
 * @param fiscal the years in which a study counts
 */
public record MoneyRules(MoneyRates rates, MoneyBasis basis, boolean midYear, FiscalYears fiscal) {

    /** Rules of a study that counts in calendar years. */
    public MoneyRules(MoneyRates rates, MoneyBasis basis, boolean midYear) {
        this(rates, basis, midYear, FiscalYears.CALENDAR);
    }

    /** The same at other rates. */
    public MoneyRules at(MoneyRates others) {
        return new MoneyRules(others, basis, midYear, fiscal);
    }

    /** Time at which a category's cost of a year falls, years after the base date. */
    public double time(CostCategory category, int year) {
        return category.time().years(year, midYear);
    }

    /** Stated amount of a constant one. */
    public double stated(double constant, CostCategory category, int year) {
        return basis == MoneyBasis.NOMINAL ? constant * rates.inflationFactor(time(category, year)) : constant;
    }

    /** Present value of a stated amount. */
    public double present(double stated, CostCategory category, int year) {
        return stated * presentFactor(category.time(), year);
    }

    /** Present value of a stated amount of 1 that falls at a time of a year. */
    public double presentFactor(FlowTime time, int year) {
        return DiscountFactor.single(rates.rateFor(basis), time.years(year, midYear));
    }
}
