package org.amberyard.core.plan;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.LayoverCharge;
import org.amberyard.core.duty.RouteUse;

/**
 * What charging one bus on a route costs in a year, to compare remedies: energy at the price of its hour, nights at the cheapest
 * of the night, and in each month the dearest of the demands that it makes on the design days, as if each fell together with the yard's peak.
 *
 * @param prices prices by month and hour
 * @param battery its pack
 * @param check when it is charged
 * @param efficiency energy into the battery over energy at the meter
 */
record BusBill(YardPrices prices, BatterySpec battery, BlockCheck check, double efficiency) {

    double year(RouteUse use) {
        double sum = use.normalDays().stream().mapToDouble(this::energy).sum();
        for (int month = 0; month < Climate.MONTHS; month++) {
            int of = month;
            sum += Stream.of(true, false).flatMap(cold -> use.days(of, cold, check.midday()))
                    .mapToDouble(day -> demand(of, day)).max().orElse(0);
        }
        return sum;
    }

    private double energy(RouteUse.NormalDay normal) {
        double dayKwh = normal.block().batteryKwh();
        double middayKwh = 0;
        double middayCost = 0;
        for (LayoverCharge stay : check.layovers(normal.block(), battery, 1)) {
            middayKwh += stay.batteryKwh();
            middayCost += stay.batteryKwh() * prices.perKwh(normal.month(), stay.fromMin());
        }
        double nightKwh = Math.max(0, dayKwh - middayKwh);
        double dayCost = middayCost + nightKwh * prices.perKwh(normal.month(), prices.nightMin(normal.month()));
        double perKwh = dayKwh > 0 ? dayCost / Math.max(dayKwh, middayKwh) : 0;
        return perKwh * (normal.monthUse().batteryKwh() + normal.monthUse().gridKwh()) / efficiency;
    }

    private double demand(int month, DayBlock day) {
        List<LayoverCharge> stays = check.layovers(day, battery, 1);
        double middayKwh = stays.stream().mapToDouble(LayoverCharge::batteryKwh).sum();
        double lastMin = day.legs().get(day.legs().size() - 1).arrivalMin();
        double hours = Math.max(1, check.window().hoursWithin(lastMin, day.nextMorningMin()));
        double nightKw = (Math.max(0, day.batteryKwh() - middayKwh) + day.legs().get(0).use().gridKwh()) / hours;
        double dearest = Math.max(nightKw * prices.perKw(month, prices.nightMin(month)),
                day.preheatKw() * prices.perKw(month, day.legs().get(0).departureMin()));
        for (LayoverCharge stay : stays) {
            double kw = stay.batteryKwh() / ((stay.toMin() - stay.fromMin()) / 60);
            dearest = Math.max(dearest, kw * prices.perKw(month, stay.fromMin()));
        }
        return dearest / efficiency;
    }
}
