package org.amberyard.model.validation;

import java.util.HashSet;
import java.util.Set;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.MeterDay;
import org.amberyard.model.meta.IsoDay;
import org.amberyard.model.study.Study;

/** Days of the meter are days of the calendar, each once, in series of equal steps that hold loads. */
final class MeterDayRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        if (study.getDepot() == null) {
            return;
        }
        Set<Object> seen = new HashSet<>();
        for (MeterDay day : study.getDepot().getMeterDays()) {
            if (IsoDay.of(day.getDate()).isEmpty()) {
                findings.fault(day, Literals.METER_DAY__DATE, findings.fact(day, Literals.METER_DAY__DATE)
                        + "; it must be a day of the calendar as year, month and day, such as 2026-01-15.");
            } else if (!seen.add(IsoDay.of(day.getDate()))) {
                findings.fault(day, Literals.METER_DAY__DATE, "it appears more than once, and the first counts; keep one.");
            }
            BuildingLoadRule.checkSeries(day, Literals.METER_DAY__LOAD_KW, findings);
        }
    }
}
