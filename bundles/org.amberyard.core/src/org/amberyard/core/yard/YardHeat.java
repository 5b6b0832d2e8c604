package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.duty.DayBlock;

/**
 * Heat from the yard for a bus's day.
 *
 * @param beforeDepartures for the cabin before each departure, in the order of the day
 * @param night for the pack through the night
 */
record YardHeat(List<BusNeed.Heat> beforeDepartures, List<BusNeed.Heat> night) {
    /** Time before departure in which a bus is heated, as in the duty. */
    private static final double PREHEAT_MIN = 30;

    YardHeat {
        beforeDepartures = List.copyOf(beforeDepartures);
        night = List.copyOf(night);
    }

    /** Nothing but an even power through the night. */
    static YardHeat even(double fromMin, double toMin, double kwh) {
        return new YardHeat(List.of(), span(fromMin, toMin, kwh));
    }

    /**
     * Heat of a day driven. A day that counts only in part is heated at full power for a shorter time, because the power is
     * what a demand charge sees.
     *
     * @param factor how much of the day's heat counts
     * @param lastMin return in the evening, minutes after midnight
     * @param nextMin departure on the next morning of service
     * @param otherKwh heat for other driving, kWh
     */
    static YardHeat of(DayBlock day, double factor, double lastMin, double nextMin, double otherKwh) {
        List<BusNeed.Heat> before = new ArrayList<>();
        double nightKwh = otherKwh;
        for (int place = 0; place < day.legs().size(); place++) {
            DayBlock.Leg leg = day.legs().get(place);
            double gridKwh = factor * leg.use().gridKwh();
            double beforeKwh = place == 0 ? Math.min(gridKwh, factor * leg.preheatKw() * PREHEAT_MIN / 60) : gridKwh;
            double minutes = leg.preheatKw() > 0 ? Math.min(PREHEAT_MIN, beforeKwh / leg.preheatKw() * 60) : PREHEAT_MIN;
            double departureMin = place == 0 ? nextMin : leg.departureMin();
            before.addAll(span(departureMin - minutes, departureMin, beforeKwh));
            nightKwh += gridKwh - beforeKwh;
        }
        return new YardHeat(before, span(lastMin, nextMin, nightKwh));
    }

    /** All of it. */
    List<BusNeed.Heat> all() {
        return Stream.concat(beforeDepartures.stream(), night.stream()).toList();
    }

    /** Power through the night, kW. */
    double nightKw() {
        return night.stream().mapToDouble(BusNeed.Heat::kw).sum();
    }

    /** Moment at which heating before a departure begins; the departure itself where the bus is not heated. */
    double beginsMin(double departureMin) {
        return beforeDepartures.stream().filter(h -> h.toMin() == departureMin).mapToDouble(BusNeed.Heat::fromMin).min()
                .orElse(departureMin);
    }

    private static List<BusNeed.Heat> span(double fromMin, double toMin, double kwh) {
        return kwh > 0 && toMin > fromMin ? List.of(new BusNeed.Heat(fromMin, toMin, kwh / ((toMin - fromMin) / 60)))
                : List.of();
    }
}
