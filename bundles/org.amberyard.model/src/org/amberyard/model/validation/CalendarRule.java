package org.amberyard.model.validation;

import org.amberyard.model.common.Month;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.study.Study;

/** No month of a calendar has more days of service than days. */
final class CalendarRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        study.getCalendars().forEach(calendar -> Month.VALUES.forEach(month -> check(calendar, month, findings)));
    }

    private static void check(ServiceCalendar calendar, Month month, Findings findings) {
        int days = CalendarDays.of(calendar, month);
        // Past 31 the field's own limit speaks.
        if (days > CalendarDays.most(month) && days <= 31) {
            findings.error(calendar, CalendarDays.field(month), month.getLiteral() + " has " + days
                    + " days of service; the month has only " + CalendarDays.most(month) + ".");
        }
    }
}
