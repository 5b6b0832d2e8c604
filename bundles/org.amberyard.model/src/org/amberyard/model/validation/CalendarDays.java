package org.amberyard.model.validation;

import java.util.List;
import org.amberyard.model.common.Month;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.site.SitePackage.Literals;
import org.eclipse.emf.ecore.EAttribute;

/** Days of service by month. */
public final class CalendarDays {
    private static final List<EAttribute> FIELDS = List.of(Literals.SERVICE_CALENDAR__JANUARY_DAYS,
            Literals.SERVICE_CALENDAR__FEBRUARY_DAYS, Literals.SERVICE_CALENDAR__MARCH_DAYS,
            Literals.SERVICE_CALENDAR__APRIL_DAYS, Literals.SERVICE_CALENDAR__MAY_DAYS,
            Literals.SERVICE_CALENDAR__JUNE_DAYS, Literals.SERVICE_CALENDAR__JULY_DAYS,
            Literals.SERVICE_CALENDAR__AUGUST_DAYS, Literals.SERVICE_CALENDAR__SEPTEMBER_DAYS,
            Literals.SERVICE_CALENDAR__OCTOBER_DAYS, Literals.SERVICE_CALENDAR__NOVEMBER_DAYS,
            Literals.SERVICE_CALENDAR__DECEMBER_DAYS);

    private CalendarDays() {
    }

    /** Field of a month. */
    public static EAttribute field(Month month) {
        return FIELDS.get(month.ordinal());
    }

    static int of(ServiceCalendar calendar, Month month) {
        return (int) calendar.eGet(field(month));
    }

    /** Days of a month; February has its leap day. */
    static int most(Month month) {
        return java.time.Month.of(month.ordinal() + 1).maxLength();
    }
}
