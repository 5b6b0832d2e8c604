package org.amberyard.core.charging;

import java.util.List;
import org.amberyard.core.battery.TaperCurve;
import org.amberyard.core.depot.Port;

/** Invented ports, packs and buses for tests. */
final class SampleYard {
    /** 10 kW into the battery, 12.5 kW at the meter. */
    static final Port SLOW = port("slow", false, 12.5, 0.8);
    /** 60 kW at the meter, 54 kW into the battery. */
    static final Port FAST = port("fast", true, 60, 0.9);
    /** Takes whatever a port gives until it is full. */
    static final TaperCurve EVEN = new TaperCurve(1000, 1000, 1, 100);
    /** Takes 100 kW up to 90 %, then less, down to 5 kW. */
    static final TaperCurve TAPERING = new TaperCurve(100, 5, 0.9, 90);
    static final StepGrid DAY = StepGrid.ofDays(1, 15);

    private SampleYard() {
    }

    static Port port(String name, boolean direct, double powerKw, double efficiency) {
        return new Port(name, direct, powerKw, efficiency, 0, 0, 0, 10, 20, 0);
    }

    /** A bus without taper that takes 100 kW of either current. */
    static PlugIn bus(int number, double fromMin, double toMin, double batteryKwh) {
        return bus(number, fromMin, toMin, batteryKwh, new BusAcceptance(100, 100, EVEN));
    }

    static PlugIn bus(int number, double fromMin, double toMin, double batteryKwh, BusAcceptance acceptance) {
        return new PlugIn(number, "B0" + number, fromMin, toMin, batteryKwh, 1, acceptance);
    }

    static YardStretch stretch(PlugIn... plugIns) {
        return stretch(SwapHours.always(DAY.lengthMin()), plugIns);
    }

    static YardStretch stretch(SwapHours hours, PlugIn... plugIns) {
        return new YardStretch(1, DAY, List.of(plugIns), hours);
    }

    /** Somebody is there between two moments of the day. */
    static SwapHours between(double fromMin, double toMin) {
        return new SwapHours(DAY.lengthMin(), List.of(new SwapHours.Span(fromMin, toMin)));
    }

    static List<PortUnit> slow(int count) {
        return PortUnit.of(SLOW, 1, count);
    }

    static YardCharging atOnce(YardStretch stretch, List<PortUnit> units) {
        return YardCharging.of(stretch, units, ChargeRule.of(ChargePolicy.AT_ONCE));
    }

    static YardCharging spread(YardStretch stretch, List<PortUnit> units) {
        return YardCharging.of(stretch, units, ChargeRule.of(ChargePolicy.SPREAD));
    }
}
