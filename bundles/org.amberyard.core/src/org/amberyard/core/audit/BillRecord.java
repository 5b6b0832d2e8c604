package org.amberyard.core.audit;

import java.util.List;
import org.amberyard.core.tariff.ContractStart;
import org.amberyard.core.tariff.DatedLoad;
import org.amberyard.core.tariff.HolidayRule;
import org.amberyard.core.tariff.PeriodBill;
import org.amberyard.core.tariff.Tariff;

/**
 * A printed bill and the tariff by which its meter is billed.
 *
 * @param place place among the bills of the study
 * @param printed the bill
 * @param tariff the tariff
 * @param holidays holidays of the tariff
 * @param contract when service on the tariff began
 */
public record BillRecord(int place, PrintedBill printed, Tariff tariff, List<HolidayRule> holidays, ContractStart contract) {

    public BillRecord {
        holidays = List.copyOf(holidays);
    }

    /** What the tariff asks for any period of a load. */
    PeriodBill over(DatedLoad load) {
        return new PeriodBill(tariff, contract, holidays, load);
    }
}
