package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.tariff.MeterMonth;

/**
 * What a month of a yard comes to before it is billed.
 *
 * @param figures single figures
 * @param busKwh energy at the meter that each bus needs on each stretch, what it lacks included, by stretch and by the order of the
 *            yard's buses, kWh
 * @param missingKwh how much of it the yard cannot bring, kWh
 * @param metered what the meter of charging counts
 * @param withoutCharging what it would count without charging, where it is shared with the building
 */
record ChargedMonth(YardYear.Month figures, List<double[]> busKwh, List<double[]> missingKwh, MeterMonth metered,
        Optional<MeterMonth> withoutCharging) {

    ChargedMonth {
        busKwh = List.copyOf(busKwh);
        missingKwh = List.copyOf(missingKwh);
    }

    /** Of loads by step. */
    static ChargedMonth of(MonthLoad load, YardInput yard) {
        int buses = yard.buses().size();
        List<double[]> needed = new ArrayList<>();
        List<double[]> missing = new ArrayList<>();
        for (StretchLoad stretch : load.stretches()) {
            double[] broughtKwh = stretch.busesKwh(buses);
            double[] lackedKwh = stretch.missingKwh(buses);
            double[] neededKwh = new double[buses];
            double times = stretch.times();
            for (int bus = 0; bus < buses; bus++) {
                neededKwh[bus] = times * (broughtKwh[bus] + lackedKwh[bus]);
                lackedKwh[bus] *= times;
            }
            needed.add(neededKwh);
            missing.add(lackedKwh);
        }
        boolean shared = yard.metering().shared();
        List<double[]> chargingKw = load.chargingKw();
        List<double[]> yardKw = load.stretchesKw(false, chargingKw);
        List<double[]> serviceKw = load.stretchesKw(true, chargingKw);
        MeterMonth apart = load.metered(false, yardKw);
        return new ChargedMonth(figures(load, apart.kwh(), load.yardPeakKw(yardKw), load.servicePeakKw(serviceKw)), needed, missing,
                shared ? load.metered(true, serviceKw) : apart, shared ? Optional.of(load.buildingOnly()) : Optional.empty());
    }

    private static YardYear.Month figures(MonthLoad load, double kwh, double yardPeakKw, double servicePeakKw) {
        List<YardYear.Shortfall> shortfalls = new ArrayList<>();
        double moved = 0;
        for (StretchLoad stretch : load.stretches()) {
            stretch.schedule().shortfalls().forEach(s -> shortfalls.add(new YardYear.Shortfall(stretch.label(), s.plugIn().bus(), s)));
            moved += stretch.times() * stretch.schedule().movedKwh();
        }
        return new YardYear.Month(load.month(), kwh, yardPeakKw, servicePeakKw, load.swaps(), shortfalls, moved,
                load.costGap());
    }
}
