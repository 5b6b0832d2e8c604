package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.math.CompensatedSum;

/**
 * Heat from the yard for a bus's day.
 *
 * @param beforeDepartures for the cabin before each departure, in the order of the day
 * @param standing for the pack through the night and through the times between runs
 * @param lackingKwh heat that the port has no power for, kWh; the battery gives it
 */
record YardHeat(List<BusNeed.Heat> beforeDepartures, List<BusNeed.Heat> standing, double lackingKwh) {
    /** Time before departure in which a bus is heated, as in the duty. */
    private static final double PREHEAT_MIN = 30;

    YardHeat {
        beforeDepartures = List.copyOf(beforeDepartures);
        standing = List.copyOf(standing);
    }

    /** No heat. */
    static final YardHeat NONE = new YardHeat(List.of(), List.of(), 0);

    /** Nothing but an even power through the night. */
    static YardHeat even(double fromMin, double toMin, double kwh) {
        return new YardHeat(List.of(), span(fromMin, toMin, kwh), 0);
    }

    /**
     * Heat of a day driven. A day that counts only in part is heated at full power for a shorter time, because the power is
     * what a demand charge sees.
     *
     * @param factor how much of the day's heat counts
     * @param lastMin return in the evening, minutes after midnight
     * @param nextMin departure on the next morning of service
     * @param otherKwh heat for other driving, through the night, kWh
     * @param portKw power behind the port, kW
     */
    static YardHeat of(DayBlock day, double factor, double lastMin, double nextMin, double otherKwh, double portKw) {
        YardHeat heat = new Stand(lastMin, nextMin, portKw).heat(day.legs().get(0), factor, otherKwh);
        for (int leg = 1; leg < day.legs().size(); leg++) {
            DayBlock.Leg next = day.legs().get(leg);
            heat = heat.and(new Stand(day.legs().get(leg - 1).arrivalMin(), next.departureMin(), portKw).heat(next, factor, 0));
        }
        return heat;
    }

    /** A time at the yard before a run, and the power behind its port, kW. */
    private record Stand(double fromMin, double toMin, double portKw) {

        /** The heat before the run, and all other evenly through the stand, as far as the port has power for it. */
        YardHeat heat(DayBlock.Leg next, double factor, double otherKwh) {
            double minutes = Math.max(0, toMin - fromMin);
            double preheatMin = Math.min(PREHEAT_MIN, minutes);
            double wantedKwh = factor * next.use().gridKwh();
            double beforeKwh = Math.min(wantedKwh, factor * next.preheatKw() * preheatMin / 60);
            double evenKwh = Math.min(otherKwh + wantedKwh - beforeKwh, portKw * minutes / 60);
            double evenKw = minutes > 0 ? evenKwh / (minutes / 60) : 0;
            double beforeKw = Math.min(next.preheatKw(), portKw - evenKw);
            double givenKwh = Math.min(beforeKwh, beforeKw * preheatMin / 60);
            return new YardHeat(givenKwh > 0 ? span(toMin - givenKwh / beforeKw * 60, toMin, givenKwh) : List.of(),
                    span(fromMin, toMin, evenKwh), otherKwh + wantedKwh - givenKwh - evenKwh);
        }
    }

    private YardHeat and(YardHeat later) {
        return new YardHeat(joined(beforeDepartures, later.beforeDepartures), joined(standing, later.standing), lackingKwh + later.lackingKwh);
    }

    private static List<BusNeed.Heat> joined(List<BusNeed.Heat> first, List<BusNeed.Heat> second) {
        if (first.isEmpty() || second.isEmpty()) {
            return first.isEmpty() ? second : first;
        }
        List<BusNeed.Heat> both = new ArrayList<>(first.size() + second.size());
        both.addAll(first);
        both.addAll(second);
        return both;
    }

    /** All that the port gives, kWh. */
    double kwh() {
        return CompensatedSum.of(all(), BusNeed.Heat::kwh);
    }

    /** Heat before the departure of a stay that is charged meanwhile, kWh. */
    double besideKwh(BusNeed.Stay stay) {
        return stay.chargeByMin() > beginsMin(stay.toMin())
                ? CompensatedSum.of(beforeDepartures, heat -> heat.toMin() == stay.toMin() ? heat.kwh() : 0)
                : 0;
    }

    /** The same but for heat beside the charge of some stays. */
    YardHeat apartFrom(List<BusNeed.Stay> stays) {
        return beforeDepartures.isEmpty() ? this
                : new YardHeat(beforeDepartures.stream()
                        .filter(h -> stays.stream().noneMatch(s -> s.toMin() == h.toMin() && besideKwh(s) > 0)).toList(),
                        standing, lackingKwh);
    }

    /** All of it. */
    List<BusNeed.Heat> all() {
        return joined(beforeDepartures, standing);
    }

    /** Power that holds the pack while the bus stands at the yard from one moment to another, kW. */
    double standingKw(double fromMin, double toMin) {
        return CompensatedSum.of(standing, heat -> heat.fromMin() < toMin && fromMin < heat.toMin() ? heat.kw() : 0);
    }

    /** Moment at which heating before a departure begins; the departure itself where the bus is not heated. */
    double beginsMin(double departureMin) {
        double begins = departureMin;
        for (BusNeed.Heat heat : beforeDepartures) {
            if (heat.toMin() == departureMin) {
                begins = Math.min(begins, heat.fromMin());
            }
        }
        return begins;
    }

    private static List<BusNeed.Heat> span(double fromMin, double toMin, double kwh) {
        return kwh > 0 && toMin > fromMin ? List.of(new BusNeed.Heat(fromMin, toMin, kwh / ((toMin - fromMin) / 60)))
                : List.of();
    }
}
