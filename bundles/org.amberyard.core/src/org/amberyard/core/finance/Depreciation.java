package org.amberyard.core.finance;

/**
 * How assets of a kind are written off.
 *
 * @param method how the basis that is left after the bonus is spread
 * @param bonusShare share of the basis that is deducted in the first year besides
 */
public record Depreciation(DepreciationMethod method, double bonusShare) {

    public Depreciation {
        Terms.share("Bonus share", bonusShare);
    }

    /** Share of the basis deducted in a year of service, 0 for the first. */
    public double share(int yearOfService) {
        boolean inTable = yearOfService >= 0 && yearOfService < method.shares().size();
        double spread = inTable ? method.shares().get(yearOfService) * (1 - bonusShare) : 0;
        return spread + (yearOfService == 0 ? bonusShare : 0);
    }

    /**
     * Share deducted in the year of service in which the asset is disposed of: the part of the year in service by the
     * convention, which is all of that for which the last of the shares is; nothing in the first year (IRS Publication 946,
     * "Figuring the Deduction for Property Sold or Disposed of").
     */
    public double shareWhenSold(int yearOfService) {
        if (yearOfService == 0) {
            return 0;
        }
        boolean last = yearOfService == method.shares().size() - 1;
        return share(yearOfService) * (last ? 1 : method.convention().lastYear());
    }
}
