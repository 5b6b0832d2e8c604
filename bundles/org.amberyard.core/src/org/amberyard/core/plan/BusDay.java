package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.RouteDuty;

/**
 * One day of one electric bus of a plan: state of charge from the first departure to the next morning's, with the pack as worn
 * as it is at the start of that year and the ports of that year. The day starts with a full pack.
 *
 * @param asked the day asked for
 * @param route place of the route
 * @param type place of the vehicle type
 * @param health present over nominal capacity of the pack
 * @param usableKwh energy of the full pack, kWh
 * @param block runs with the energy that each takes
 * @param moments state of charge at departures, arrivals and the next morning's departure
 * @param outcome what a week of such days comes to
 */
public record BusDay(Asked asked, int route, int type, double health, double usableKwh, DayBlock block,
        List<BlockCheck.Moment> moments, BlockCheck.Outcome outcome) {

    /**
     * Which day of which bus.
     *
     * @param place place in the fleet
     * @param year year, counted from the base year
     * @param month month, 0 for January
     * @param extendedYear true for a day of the extended-year programme, false for a school day
     * @param kind which day of the month
     */
    public record Asked(int place, int year, int month, boolean extendedYear, DayKind kind) {
    }

    public BusDay {
        moments = List.copyOf(moments);
    }

    /** The day; empty when no electric bus stands in the place that year, or its route is not driven. */
    public static Optional<BusDay> of(StudyResult result, int plan, Asked asked) {
        StudyInput study = result.input();
        Optional<VehicleYear> bus = result.plans().get(plan).fleet().inYear(asked.year()).stream()
                .filter(v -> v.place() == asked.place()).findFirst();
        int route = study.buses().get(asked.place()).route().orElse(-1);
        if (bus.isEmpty() || route < 0 || result.duty().use(route, bus.get().vehicle().type()).isEmpty()) {
            return Optional.empty();
        }
        Vehicle vehicle = bus.get().vehicle();
        RouteDuty duty = result.duty().duty(route, vehicle.type());
        return study.types().get(vehicle.type()).electric().filter(e -> duty.drivenOn(asked.month(), asked.extendedYear()))
                .map(electric -> driven(result, plan, asked, route, vehicle, electric, duty));
    }

    private static BusDay driven(StudyResult result, int plan, Asked asked, int route, Vehicle vehicle, ElectricSpec electric,
            RouteDuty duty) {
        StudyInput study = result.input();
        BatterySpec battery = electric.battery();
        double health = vehicle.health();
        DayBlock block = duty.block(asked.month(), asked.extendedYear(),
                asked.kind().in(study.duty().climate().months().get(asked.month())), study.duty().habit());
        double batteryKw = new PortFleet(study.depot(), result.plans().get(plan).plan().ports())
                .batteryKw(study.types().get(vehicle.type()), asked.year());
        BlockCheck check = RouteFitting.check(study, batteryKw, study.middayCharging());
        return new BusDay(asked, route, vehicle.type(), health, battery.usableKwh(health), block,
                check.moments(block, battery, health), check.of(block, battery, health));
    }
}
