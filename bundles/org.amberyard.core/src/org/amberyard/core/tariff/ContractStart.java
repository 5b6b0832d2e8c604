package org.amberyard.core.tariff;

import java.time.LocalDate;

/**
 * When service on a tariff began, as far as is known. A year of the contract is a calendar year.
 *
 * @param year calendar year in which it began; 0 where that is not told, and it has long been there
 * @param settledYear year of the contract from which all stays as it is
 */
public record ContractStart(int year, int settledYear) {

    /** Service that has long been there. */
    public static ContractStart longAgo(int settledYear) {
        return new ContractStart(0, settledYear);
    }

    /** Year of the contract in which a day falls, 1 for the first and for days before. */
    public int contractYear(LocalDate day) {
        return year > 0 ? Math.max(1, Math.min(settledYear, day.getYear() - year + 1)) : settledYear;
    }
}
