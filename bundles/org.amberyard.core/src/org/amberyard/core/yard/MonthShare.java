package org.amberyard.core.yard;

import java.util.function.ToDoubleFunction;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.math.CompensatedSum;

/**
 * How much of a day's energy counts on the days of a month, so that all days together take what the month's normal days take.
 *
 * @param extremeDays factor of the coldest and the hottest day; 1 unless these two alone take more than the month
 * @param otherDays factor of the normal days
 */
record MonthShare(double extremeDays, double otherDays) {

    /**
     * Shares of one kind of energy.
     *
     * @param midday true when the bus is plugged in between runs
     * @param energy the energy, kWh
     */
    static MonthShare of(YardBus bus, ServiceMonth month, RouteUse.NormalDay normal, boolean midday,
            ToDoubleFunction<EnergyUse> energy) {
        double monthKwh = bus.routeShare() * energy.applyAsDouble(normal.monthUse());
        double extremeKwh = month.times().keySet().stream().filter(StretchKind::extreme).sorted()
                .mapToDouble(kind -> dayKwh(extreme(bus, month, kind).block(midday), energy)).sum();
        double extremeDays = extremeKwh > monthKwh ? monthKwh / extremeKwh : 1;
        double normalKwh = (month.days() - month.extremeDays()) * dayKwh(normal.block(), energy);
        return new MonthShare(extremeDays, normalKwh > 0 ? Math.max(0, monthKwh - extremeDays * extremeKwh) / normalKwh : 0);
    }

    private static double dayKwh(DayBlock day, ToDoubleFunction<EnergyUse> energy) {
        return CompensatedSum.of(day.legs(), leg -> energy.applyAsDouble(leg.use()));
    }

    /** The coldest or the hottest day of a bus on a route. */
    static RouteUse.DesignDay extreme(YardBus bus, ServiceMonth month, StretchKind kind) {
        return bus.route().orElseThrow().designDay(month.month(), month.extendedYear(), kind == StretchKind.COLDEST_DAY)
                .orElseThrow();
    }

    /** Factor of a day of a stretch. */
    double of(StretchKind kind) {
        return kind.extreme() ? extremeDays : otherDays;
    }
}
