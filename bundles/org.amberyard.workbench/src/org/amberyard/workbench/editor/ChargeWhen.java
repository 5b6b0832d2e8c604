package org.amberyard.workbench.editor;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.units.MonthNames;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.meta.ClockTime;
import org.amberyard.model.meta.PlainNumber;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** When a row of a tariff applies, as people say it: {@code June to September, weekdays, 14:00 to 20:00}; {@code all year, every day, all day}. */
final class ChargeWhen {

    private ChargeWhen() {
    }

    static String of(EObject element) {
        TariffCharge row = (TariffCharge) element;
        List<String> parts = new ArrayList<>(List.of(months(row),
                Words.choice((EEnum) Literals.TARIFF_CHARGE__DAYS.getEType(), row.getDays()), hours(row)));
        if (row.getFromKwh() > 0) {
            parts.add(NLS.bind(Messages.Charge_fromKwh, Words.figure(plain(row.getFromKwh()))));
        }
        if (row.getFromHoursOfUse() > 0) {
            parts.add(NLS.bind(Messages.Charge_fromHours, Words.figure(plain(row.getFromHoursOfUse()))));
        }
        return String.join(", ", parts);
    }

    private static String plain(double number) {
        return PlainNumber.text(number);
    }

    private static String months(TariffCharge row) {
        if (row.getFirstMonth() == Month.JANUARY && row.getLastMonth() == Month.DECEMBER) {
            return Messages.Charge_allYear;
        }
        String first = month(row.getFirstMonth());
        return row.getFirstMonth() == row.getLastMonth() ? first : NLS.bind(Messages.Charge_span, first, month(row.getLastMonth()));
    }

    private static String month(Month month) {
        return Words.say(MonthNames.full(month.getValue()));
    }

    private static String hours(TariffCharge row) {
        return row.getFromMin() == row.getToMin() ? Messages.Charge_allDay
                : NLS.bind(Messages.Charge_span, ClockTime.text(row.getFromMin()), ClockTime.text(row.getToMin()));
    }
}
