package org.amberyard.core.audit;

import java.util.List;
import org.amberyard.core.tariff.DatedLoad;

/**
 * Printed bills of a meter and what it counted.
 *
 * @param bills the bills
 * @param load what the meter counted, day by day
 */
public record BillRecords(List<BillRecord> bills, DatedLoad load) {
    /** No bills. */
    public static final BillRecords NONE = new BillRecords(List.of(), DatedLoad.NONE);

    public BillRecords {
        bills = List.copyOf(bills);
    }

    /** Each bill held against its tariff. */
    public List<BillAudit> audits() {
        return bills.stream().map(bill -> BillAudit.of(bill, load)).toList();
    }
}
