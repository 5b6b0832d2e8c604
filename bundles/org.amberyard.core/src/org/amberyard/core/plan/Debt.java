package org.amberyard.core.plan;

import org.amberyard.core.finance.DebtSchedule;
import org.amberyard.core.finance.Lease;
import org.amberyard.core.why.Derivation;

/**
 * Money that a plan has drawn, or something that it has leased.
 *
 * @param financing by which it was
 * @param year year of the study at whose start it was drawn
 * @param drawn how the sum comes about, money of the time
 * @param schedule payments, money of their time
 */
public record Debt(Financing financing, int year, Derivation drawn, DebtSchedule schedule) {

    static Debt of(Financing financing, int year, Derivation drawn) {
        return new Debt(financing, year, drawn, financing.terms().schedule(drawn.value()));
    }

    /** True for a lease. */
    public boolean leased() {
        return financing.terms() instanceof Lease;
    }

    /** Owed at the end of a year of the study, sinking fund taken off; zero before it is drawn. */
    public double owedAtEndOf(int yearOfStudy) {
        return yearOfStudy < year ? 0 : schedule.owedAfter(yearOfStudy + 1 - year);
    }

    /** Fee that falls on each year over which the debt runs. */
    double feeDeducted(int yearOfStudy) {
        int inYear = yearOfStudy - year;
        return inYear >= 0 && inYear < schedule.years() ? schedule.fee() / schedule.years() : 0;
    }

    /** Interest paid in a year, less what the sinking fund earns. */
    double interestDeducted(int yearOfStudy) {
        return schedule.interest(yearOfStudy - year) - schedule.fundEarnings(yearOfStudy - year);
    }
}
