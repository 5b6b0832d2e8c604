package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.math.CompensatedSum;

/**
 * Least energy that a bus must take in between its runs to stay above its reserve, when its day starts with a full pack and the
 * night fills it again. What is not needed between runs waits for the night, where energy and demand cost less.
 *
 * <p>The need before a run is met at the latest stand at the yard that still comes in time; what does not fit there is
 * taken at the stand before.
 */
public final class LeastLayoverCharge {
    private final DayBlock day;
    private final BatterySpec battery;
    private final double reserveShare;
    private final double usableKwh;
    /** Energy drawn by the end of each run, kWh. */
    private final double[] drawnKwh;

    /**
     * @param day a bus's day
     * @param battery its pack
     * @param health present over nominal capacity of the pack
     * @param reserveShare share of the usable energy that planning keeps
     */
    public LeastLayoverCharge(DayBlock day, BatterySpec battery, double health, double reserveShare) {
        this.day = day;
        this.battery = battery;
        this.reserveShare = reserveShare;
        this.usableKwh = battery.usableKwh(health);
        this.drawnKwh = CompensatedSum.upTo(day.legs(), leg -> leg.use().batteryKwh());
    }

    /** A stand at the yard between the run at a place of the day and the next. */
    private record Stand(int afterLeg, double fromMin, double toMin, double batteryKwh) {

        double hours() {
            return (toMin - fromMin) / 60;
        }

        Stand plus(double moreKwh) {
            return new Stand(afterLeg, fromMin, toMin, batteryKwh + moreKwh);
        }
    }

    /**
     * What must be taken in, in the order of the day; stands where nothing is needed are left out.
     *
     * @param batteryKw power into the battery, kW
     */
    public List<LayoverCharge> at(double batteryKw) {
        List<Stand> stands = stands();
        for (int leg = 0; leg < day.legs().size(); leg++) {
            double missingKwh = belowReserveKwh(leg) - taken(stands, leg);
            for (int place = stands.size() - 1; place >= 0 && missingKwh > 0; place--) {
                Stand stand = stands.get(place);
                if (stand.afterLeg() < leg) {
                    double moreKwh = Math.min(missingKwh, roomKwh(stands, place, batteryKw));
                    stands.set(place, stand.plus(moreKwh));
                    missingKwh -= moreKwh;
                }
            }
        }
        return stands.stream().filter(s -> s.batteryKwh() > 0)
                .map(s -> new LayoverCharge(s.fromMin(), s.toMin(), s.batteryKwh())).toList();
    }

    private List<Stand> stands() {
        List<Stand> stands = new ArrayList<>();
        for (int leg = 0; leg + 1 < day.legs().size(); leg++) {
            DayBlock.Leg before = day.legs().get(leg);
            double toMin = day.legs().get(leg + 1).departureMin();
            if (before.yardAfter() && toMin > before.arrivalMin()) {
                stands.add(new Stand(leg, before.arrivalMin(), toMin, 0));
            }
        }
        return stands;
    }

    /** How far a bus that is not charged between runs falls below its reserve by the end of a run, kWh. */
    private double belowReserveKwh(int leg) {
        double floorShare = reserveShare + battery.lockedShare(day.legs().get(leg).packC());
        return drawnKwh[leg] + floorShare * usableKwh - usableKwh;
    }

    private static double taken(List<Stand> stands, int beforeLeg) {
        return CompensatedSum.of(stands, s -> s.afterLeg() < beforeLeg ? s.batteryKwh() : 0);
    }

    /**
     * What a stand can still take in: by its time beside the heat before the next run, and because the pack is never
     * more than full.
     */
    private double roomKwh(List<Stand> stands, int place, double batteryKw) {
        Stand stand = stands.get(place);
        double heatKwh = day.legs().get(stand.afterLeg() + 1).use().gridKwh();
        double byTime = batteryKw * stand.hours() - heatKwh - stand.batteryKwh();
        double byPack = Double.POSITIVE_INFINITY;
        for (int later = place; later < stands.size(); later++) {
            byPack = Math.min(byPack, drawnKwh[stands.get(later).afterLeg()] - taken(stands, stands.get(later).afterLeg() + 1));
        }
        return Math.max(0, Math.min(byTime, byPack));
    }
}
