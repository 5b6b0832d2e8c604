package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import org.amberyard.core.charging.ChargeSpan;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.PeakMoment;

/**
 * What made up the demand of a meter at one moment.
 *
 * @param buses buses that draw then, the greatest first
 * @param standbyKw power that the ports draw at all hours, kW
 * @param buildingKw load of the building where it is behind the same meter, else 0, kW
 */
public record PeakLoad(List<BusDraw> buses, double standbyKw, double buildingKw) {

    /**
     * What a bus draws at the meter.
     *
     * @param bus its name
     * @param kw charging and heat, kW
     * @param charging false when it is only heated
     */
    public record BusDraw(String bus, double kw, boolean charging) {
    }

    public PeakLoad {
        buses = List.copyOf(buses);
    }

    /**
     * The load at a moment of a month.
     *
     * @throws IllegalArgumentException when the month has no such day
     */
    static PeakLoad of(YardInput yard, MonthLoad month, PeakMoment moment) {
        boolean shared = yard.metering().shared();
        for (StretchLoad stretch : month.stretches()) {
            List<DayClass> days = stretch.kind().days();
            for (int day = 0; day < days.size(); day++) {
                if (stretch.dayLabel(day).equals(moment.day().label())) {
                    int step = day * moment.day().kw().length + moment.step();
                    return new PeakLoad(draws(yard, stretch, step), stretch.standbyKw(), shared ? stretch.buildingKw()[step] : 0);
                }
            }
        }
        return month.idle().stream().filter(d -> d.label().equals(moment.day().label())).findFirst()
                .map(d -> new PeakLoad(List.of(), d.standbyKw(), shared ? d.buildingKw()[moment.step()] : 0))
                .orElseThrow(() -> new IllegalArgumentException("The month has no day that is “" + moment.day().label() + "”"));
    }

    private static List<BusDraw> draws(YardInput yard, StretchLoad stretch, int step) {
        List<BusDraw> draws = new ArrayList<>();
        for (int bus = 0; bus < yard.buses().size(); bus++) {
            double kw = stretch.busKw(bus)[step];
            if (ChargeSpan.draws(kw)) {
                draws.add(new BusDraw(yard.buses().get(bus).name(), kw, ChargeSpan.draws(kw - stretch.base().heat().get(bus).kw()[step])));
            }
        }
        draws.sort(Comparator.comparingDouble(BusDraw::kw).reversed());
        return draws;
    }

    /** Words such as "drawing then: E01 19.2 kW, E02 4.0 kW (heat only), ports at rest 0.6 kW, building 60.0 kW". */
    public String words() {
        return words(buses.size());
    }

    /** The same with the buses that draw most, and the number of the others. */
    public String words(int mostBuses) {
        StringJoiner words = new StringJoiner(", ", "drawing then: ", "");
        words.setEmptyValue("nothing draws then");
        buses.stream().limit(mostBuses).forEach(b -> words.add(figure(b.bus(), b.kw()) + (b.charging() ? "" : " (heat only)")));
        if (buses.size() > mostBuses) {
            double restKw = buses.stream().skip(mostBuses).mapToDouble(BusDraw::kw).sum();
            words.add(figure(buses.size() - mostBuses + " more", restKw));
        }
        if (standbyKw > 0) {
            words.add(figure("ports at rest", standbyKw));
        }
        if (buildingKw > 0) {
            words.add(figure("building", buildingKw));
        }
        return words.toString();
    }

    private static String figure(String what, double kw) {
        return String.format(Locale.ROOT, "%s %.1f kW", what, kw);
    }
}
