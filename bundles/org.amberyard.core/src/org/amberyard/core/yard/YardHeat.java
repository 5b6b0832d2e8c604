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

    /** No heat. */
    static final YardHeat NONE = new YardHeat(List.of(), List.of());

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
     * @param portKw power behind the port, kW; a bus that would be heated with more is heated longer
     */
    static YardHeat of(DayBlock day, double factor, double lastMin, double nextMin, double otherKwh, double portKw) {
        DayBlock.Leg first = day.legs().get(0);
        double firstKwh = Math.min(factor * first.use().gridKwh(), factor * first.preheatKw() * PREHEAT_MIN / 60);
        double nightKwh = otherKwh + factor * first.use().gridKwh() - firstKwh;
        double nightKw = nightKwh / ((nextMin - lastMin) / 60);
        List<BusNeed.Heat> before = new ArrayList<>(before(nextMin, firstKwh, first.preheatKw(), portKw - nightKw));
        day.legs().stream().skip(1).forEach(leg -> before.addAll(
                before(leg.departureMin(), factor * leg.use().gridKwh(), leg.preheatKw(), portKw)));
        return new YardHeat(before, span(lastMin, nextMin, nightKwh));
    }

    private static List<BusNeed.Heat> before(double departureMin, double kwh, double preheatKw, double mostKw) {
        double minutes = preheatKw > 0 ? Math.min(PREHEAT_MIN, kwh / preheatKw * 60) : PREHEAT_MIN;
        double least = mostKw > 0 ? kwh / mostKw * 60 : minutes;
        return span(departureMin - Math.max(minutes, least), departureMin, kwh);
    }

    /** All of it, kWh. */
    double kwh() {
        return all().stream().mapToDouble(BusNeed.Heat::kwh).sum();
    }

    /** Heat before the departure of a stay that is charged meanwhile, kWh. */
    double besideKwh(BusNeed.Stay stay) {
        return stay.chargeByMin() > beginsMin(stay.toMin())
                ? beforeDepartures.stream().filter(h -> h.toMin() == stay.toMin()).mapToDouble(BusNeed.Heat::kwh)
                .sum() : 0;
    }

    /** The same but for heat beside the charge of some stays. */
    YardHeat apartFrom(List<BusNeed.Stay> stays) {
        return new YardHeat(beforeDepartures.stream()
                .filter(h -> stays.stream().noneMatch(s -> s.toMin() == h.toMin() && besideKwh(s) > 0)).toList(),
                night);
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
