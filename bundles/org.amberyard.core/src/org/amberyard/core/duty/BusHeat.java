package org.amberyard.core.duty;

import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.PackHeat;

/**
 * Temperatures of cabin and pack of an electric bus as it drives and stands through the day, and the power that holds them.
 *
 * <p>While driving all of it comes from the battery (or the fuel-fired heater). Plugged in at the yard, the pack is held in
 * its limits on the yard's power; with preconditioning it is warmed to a mild temperature in the last hour before departure,
 * and the cabin brought to temperature in the last half hour.
 */
final class BusHeat {
    private static final double STEP_MIN = 60;
    private static final double PACK_PRECONDITION_MIN = 60;
    private static final double CABIN_PRECONDITION_MIN = 30;

    private final ElectricSpec vehicle;
    private final WeatherDay weather;
    private final HeatBalance pack;
    private final HeatBalance.Thermostat packLimits;
    private final HeatBalance.Thermostat mildLimits;
    private double cabinC;
    private double packC;
    private double packHeatKw;

    BusHeat(ElectricSpec vehicle, WeatherDay weather, double startMin) {
        this.vehicle = vehicle;
        this.weather = weather;
        PackHeat heat = vehicle.battery().heat();
        this.pack = VehicleRun.pack(vehicle.battery());
        this.packLimits = limits(heat, heat.heatedToC());
        this.mildLimits = limits(heat, Math.max(heat.heatedToC(), BatterySpec.MILD_C));
        this.cabinC = weather.airC(startMin);
        this.packC = Math.max(packLimits.lowC(), Math.min(packLimits.highC(), weather.meanAirC()));
    }

    private static HeatBalance.Thermostat limits(PackHeat heat, double lowC) {
        return new HeatBalance.Thermostat(lowC, Math.max(lowC, heat.cooledToC()), heat.heaterKw(),
                heat.coolerKw() * PackHeat.COOLER_COP);
    }

    double packC() {
        return packC;
    }

    /** Electric power into the pack's heater and cooler in the last step, kW. */
    double packHeatKw() {
        return packHeatKw;
    }

    /** Lets the pack follow the air for a time, with heat of its own and its heater and cooler at work. */
    void holdPack(double airC, double ownHeatKw, double hours) {
        holdPack(airC, ownHeatKw, hours, pack.goneShare(hours), packLimits);
    }

    /** The same while a part of a piece of a run is driven. */
    void holdPack(RunWork run, int place, double part, double ownHeatKw) {
        double hours = part * run.drive().pieces().get(place).steps().totalHours;
        holdPack(run.airC(), ownHeatKw, hours, run.driven().packGone(place, part, pack), packLimits);
    }

    private void holdPack(double airC, double ownHeatKw, double hours, double gone, HeatBalance.Thermostat limits) {
        HeatBalance.Held held = pack.held(packC, airC, ownHeatKw, hours, gone, limits);
        packC = held.endC();
        packHeatKw = held.heatKw() + held.coldKw() / PackHeat.COOLER_COP;
    }

    /** Holds the cabin while a part of a piece of a run is driven. */
    HeatBalance.Held holdCabin(RunWork run, int place, double part) {
        double hours = part * run.drive().pieces().get(place).steps().totalHours;
        HeatBalance.Held held = run.driven().cabin().held(cabinC, run.airC(), run.gainsKw(), hours, run.driven().cabinGone(place, part),
                vehicle.body().cabin().thermostat(vehicle.heater().outputLimitKw()));
        cabinC = held.endC();
        return held;
    }

    /** Puts the cabin at its setpoint, where a consumption curve stands for the heat. */
    void cabinAtSetpoint() {
        cabinC = vehicle.body().cabin().setpointC();
    }

    /**
     * What standing took from the yard.
     *
     * @param gridKwh electric energy, kWh
     * @param fuelL fuel of a fuel-fired heater, L
     * @param lastKw mean electric power in the half hour before departure, kW
     */
    record Stand(double gridKwh, double fuelL, double lastKw) {

        static final Stand NONE = new Stand(0, 0, 0);

        Stand plus(Stand o) {
            return new Stand(gridKwh + o.gridKwh, fuelL + o.fuelL, o.lastKw);
        }
    }

    /** Stands from one minute to another, plugged in or not; heat takes no more than the port gives. */
    Stand stand(double fromMin, double toMin, boolean plugged, YardHabit habit) {
        boolean warmed = plugged && habit.precondition();
        double packFrom = warmed ? Math.max(fromMin, toMin - PACK_PRECONDITION_MIN) : toMin;
        double cabinFrom = warmed ? Math.max(fromMin, toMin - CABIN_PRECONDITION_MIN) : toMin;
        return stand(fromMin, packFrom, new Care(plugged, false, false, habit.portKw()))
                .plus(stand(packFrom, cabinFrom, new Care(plugged, true, false, habit.portKw())))
                .plus(stand(cabinFrom, toMin, new Care(plugged, true, true, habit.portKw())));
    }

    /** What is done to a standing bus. */
    private record Care(boolean plugged, boolean warmPack, boolean warmCabin, double portKw) {
    }

    private Stand stand(double fromMin, double toMin, Care care) {
        Stand sum = Stand.NONE;
        for (double at = fromMin; at < toMin; at += STEP_MIN) {
            sum = sum.plus(step(at, Math.min(toMin, at + STEP_MIN), care));
        }
        return sum;
    }

    private Stand step(double fromMin, double toMin, Care care) {
        double middle = (fromMin + toMin) / 2;
        double hours = (toMin - fromMin) / 60;
        double airC = weather.airC(middle);
        double packKw = standPackKw(airC, hours, care);
        Cabin cabin = vehicle.body().cabin();
        HeatBalance.Thermostat limits = care.warmCabin() ? cabin.thermostat(vehicle.heater().outputKw(care.portKw() - packKw, airC))
                : new HeatBalance.Thermostat(cabin.setpointC(), cabin.setpointC(), 0, 0);
        HeatBalance.Held held = cabin.closed().held(cabinC, airC, cabin.gainsKw(0, weather.sunWPerM2(middle)), hours, limits);
        cabinC = held.endC();
        double heatKwh = held.heatKw() * hours;
        double cabinKw = vehicle.heater().electricKwh(held.heatKw(), airC) + held.coldKw() / cabin.coolingCop();
        return new Stand((packKw + cabinKw) * hours, vehicle.heater().fuelL(heatKwh), packKw + cabinKw);
    }

    private double standPackKw(double airC, double hours, Care care) {
        if (!care.plugged()) {
            packC = pack.endC(packC, airC, 0, hours);
            return 0;
        }
        HeatBalance.Thermostat limits = care.warmPack() ? mildLimits : packLimits;
        holdPack(airC, 0, hours, pack.goneShare(hours), limits.withHeat(Math.min(limits.heatKw(), care.portKw())));
        return packHeatKw;
    }
}
