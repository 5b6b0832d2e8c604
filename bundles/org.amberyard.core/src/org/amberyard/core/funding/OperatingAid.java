package org.amberyard.core.funding;

/**
 * Aid of a state that reimburses a share of operating cost and of the straight-line depreciation of buses, some years later.
 * It takes back that share of whatever a plan saves. Only what the operator has paid itself depreciates.
 *
 * @param name name
 * @param firstYear first year of the study whose cost is reimbursed
 * @param lastYear last year of the study whose cost is reimbursed
 * @param operatingShare share of the operating cost
 * @param depreciationShare share of the yearly depreciation
 * @param depreciationYears years over which a bus depreciates
 * @param lagYears years from the cost to the payment
 */
public record OperatingAid(String name, int firstYear, int lastYear, double operatingShare, double depreciationShare,
        int depreciationYears, int lagYears) {

    /** True when the cost of a year of the study is reimbursed. */
    public boolean covers(int year) {
        return year >= firstYear && year <= lastYear;
    }

    /**
     * Depreciation in a year of a bus, in the money in which it was paid for.
     *
     * @param paid own money paid for the bus
     * @param bought year of its purchase
     * @param year year in which it is in the fleet
     */
    public double depreciation(double paid, int bought, int year) {
        return year >= bought && year < bought + depreciationYears ? paid / depreciationYears : 0;
    }
}
