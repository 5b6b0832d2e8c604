package org.amberyard.core.finance;

/**
 * How the operator is taxed. Deductions that exceed the income of the fleet save tax on other income, so a negative tax is a
 * receipt; gains are taxed at the one rate.
 *
 * @param rate income tax rate; zero for a public district, which pays none
 * @param buses how buses and packs are written off
 * @param infrastructure how ports and site works are written off
 */
public record TaxRules(double rate, Depreciation buses, Depreciation infrastructure) {

    /** A public district. */
    public static final TaxRules NONE = new TaxRules(0, gds(PropertyClass.YEARS_5), gds(PropertyClass.YEARS_15));

    public TaxRules {
        Terms.share("Tax rate", rate);
    }

    private static Depreciation gds(PropertyClass property) {
        return new Depreciation(new Macrs(property, Convention.HALF_YEAR), 0);
    }
}
