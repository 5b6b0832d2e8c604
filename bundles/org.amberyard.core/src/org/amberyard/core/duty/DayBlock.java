package org.amberyard.core.duty;

import java.util.List;
import org.amberyard.core.math.CompensatedSum;

/**
 * One bus's day on a route: its runs with the energy that each takes and where the bus stands after it.
 *
 * @param legs runs of the day in order; at least one
 * @param nightPackC temperature of the pack while it is charged at night, °C
 */
public record DayBlock(List<Leg> legs, double nightPackC) {

    /**
     * One run of the day.
     *
     * @param name name of the run
     * @param departureMin departure, minutes after midnight
     * @param arrivalMin end of the run, minutes after midnight
     * @param yardAfter true when the bus stands at the yard until its next run
     * @param outsideC outside air temperature, °C
     * @param use energy of the run
     * @param packC temperature of the pack at the end of the run, °C
     * @param preheatKw power from the yard in the half hour before the run, for heat, kW
     */
    public record Leg(String name, double departureMin, double arrivalMin, boolean yardAfter, double outsideC,
            EnergyUse use, double packC, double preheatKw) {
    }

    /** Minutes in a day. */
    public static final double DAY_MIN = 1440;

    public DayBlock {
        legs = List.copyOf(legs);
    }

    /** The next morning's departure when the next day is like this one, minutes after this day's midnight. */
    public double nextMorningMin() {
        return legs.get(0).departureMin() + DAY_MIN;
    }

    /** Distance of the day, km. */
    public double km() {
        return legs.stream().mapToDouble(l -> l.use().km()).sum();
    }

    /** What each run takes, in order. */
    public List<EnergyUse> uses() {
        return legs.stream().map(Leg::use).toList();
    }

    /** Net battery energy of the day, kWh. */
    public double batteryKwh() {
        return CompensatedSum.of(legs, l -> l.use().batteryKwh());
    }

    /** Coldest pack at the end of a run, °C. */
    public double coldestPackC() {
        return legs.stream().mapToDouble(Leg::packC).min().orElseThrow();
    }

    /** Highest power from the yard for heat before a run, kW. */
    public double preheatKw() {
        return legs.stream().mapToDouble(Leg::preheatKw).max().orElseThrow();
    }
}
