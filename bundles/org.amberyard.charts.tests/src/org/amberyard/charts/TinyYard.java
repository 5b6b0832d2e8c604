package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.ChargeAcceptance;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.Port;
import org.amberyard.core.duty.EnergyCauses;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.plan.VehicleTypeInput;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.yard.BuildingLoad;
import org.amberyard.core.yard.Metering;
import org.amberyard.core.yard.ServiceDays;
import org.amberyard.core.yard.StretchKind;
import org.amberyard.core.yard.StretchLoad;
import org.amberyard.core.yard.SwapTimes;
import org.amberyard.core.yard.YardBus;
import org.amberyard.core.yard.YardCalendar;
import org.amberyard.core.yard.YardInput;
import org.amberyard.core.yard.YardPlanner;
import org.amberyard.core.yard.YardYear;
import org.amberyard.testsupport.SampleDistrict;

/**
 * Two buses, A and B, that take 18 kWh into their packs on each of 20 service days a month, from ports of 10 kW that bring 9 of
 * them into the pack; so each charges two hours. They come at 18:00 and leave at 6:00. The building takes 30 kW. Invented.
 */
record TinyYard(YardInput input) {
    private static final int SERVICE_DAYS = 240;
    private static final int STEP_MIN = 15;

    static TinyYard of(int ports, ChargeRule rule, Metering metering, SwapTimes swaps) {
        List<YardBus> buses = new ArrayList<>();
        for (String name : List.of("A", "B")) {
            EnergyUse other = new EnergyUse(0, 0, 18.0 * SERVICE_DAYS, 0, EnergyCauses.ZERO, 0, 0, 0, 0);
            buses.add(new YardBus(buses.size() + 3, name, 10, 0, battery(), 1, Optional.empty(), 1, other));
        }
        Port port = new Port("AC", false, 10, 0.9, 0, 0, 0, 10, 10, 0);
        List<Integer> days = Collections.nCopies(12, 20);
        YardCalendar calendar = YardCalendar.of(new ServiceDays(days, Collections.nCopies(12, 0)), metering.days(2026));
        return new TinyYard(new YardInput(buses, PortUnit.of(port, 1, ports), rule, false, 0.2, metering, 1, 1,
                BuildingLoad.constant(30, 1440 / STEP_MIN), calendar, STEP_MIN, swaps, Double.POSITIVE_INFINITY));
    }

    /** 100 a month, 0.10 per kWh, 10 per kW. */
    static Tariff flat() {
        return Tariff.flat("Flat", 100, 0.1, 0, 10, 0);
    }

    /** A pack that takes 10 kW to the last. */
    private static BatterySpec battery() {
        BatterySpec of = SampleDistrict.small().types().stream().map(VehicleTypeInput::electric).flatMap(Optional::stream)
                .findFirst().orElseThrow().battery();
        return new BatterySpec(1000, 1, 0, of.resistance(), new ChargeAcceptance(1, 0, -40, 0.9), of.heat(), of.life());
    }

    StretchLoad january(StretchKind kind) {
        return new YardPlanner(input).year().get(0).stretches().stream().filter(s -> s.kind() == kind).findFirst().orElseThrow();
    }

    YardYear year() {
        return YardYear.of(input);
    }
}
