package org.amberyard.core.finance;

/** What financing and taxes add to the costs of a plan. A receipt is a negative cost. */
public enum FinanceLine {
    /** Money that is drawn. */
    BORROWED("Borrowed", true, false),
    /** Cost of issues. */
    FEES("Fees of borrowing", true, false),
    /** Interest of loans and bonds. */
    INTEREST("Interest", true, false),
    /** Principal of loans and bonds. */
    PRINCIPAL("Principal", true, false),
    /** Payments of leases, buy-outs included. */
    LEASE_PAYMENTS("Lease payments", true, false),
    /** Paid into sinking funds; negative where a fund pays. */
    SINKING_FUND("Sinking funds", true, false),
    /** What is owed at the end of the study, less sinking funds: paid then, so that plans compare. */
    DEBT_LEFT("Debt left at the end", false, false),
    /** Income tax; negative where deductions save it. */
    TAXES("Income tax", true, true),
    /** Tax on what is left at the end of the study, as if it were sold then. */
    TAX_ON_WHAT_IS_LEFT("Tax on what is left", false, true);

    private final String label;
    private final boolean cash;
    private final boolean tax;

    FinanceLine(String label, boolean cash, boolean tax) {
        this.label = label;
        this.cash = cash;
        this.tax = tax;
    }

    /** Name for tables. */
    public String label() {
        return label;
    }

    /** True when it goes through a year's budget; else it only settles accounts at the end of the study. */
    public boolean cash() {
        return cash;
    }

    /** True when it is a tax. */
    public boolean tax() {
        return tax;
    }

    /** True when it is a payment on what has been borrowed. */
    public boolean debtService() {
        return cash && !tax && this != BORROWED;
    }
}
