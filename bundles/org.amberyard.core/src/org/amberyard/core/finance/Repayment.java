package org.amberyard.core.finance;

/** How the principal of a debt is repaid. */
public enum Repayment {
    /** Every payment is the same. */
    LEVEL,
    /** Every payment repays the same principal; interest falls with the balance. */
    EQUAL_PRINCIPAL,
    /** Interest only; the whole principal with the last payment. */
    AT_END
}
