package org.amberyard.core.duty;

import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.PackHeat;

/**
 * Temperatures of cabin and pack of an electric bus as it drives and stands through the day, and the power that holds them.
 *
 * <p>While driving all of it comes from the battery (or the fuel-fired heater). Plugged in at the yard, the pack is held in
 * its limits on the yard's power; with preconditioning the cabin too, in the last half hour before departure.
 */
final class BusHeat {
    private static final double STEP_MIN = 60;
    private static final double PRECONDITION_MIN = 30;

    private final ElectricSpec vehicle;
    private final WeatherDay weather;
    private final HeatBalance pack;
    private final HeatBalance.Thermostat packLimits;
    private double cabinC;
    private double packC;
    private double packHeatKw;

    BusHeat(ElectricSpec vehicle, WeatherDay weather, double startMin) {
        this.vehicle = vehicle;
        this.weather = weather;
        BatterySpec battery = vehicle.battery();
        PackHeat heat = battery.heat();
        this.pack = new HeatBalance(heat.capacityKwhPerK(battery.nominalKwh()),
                heat.conductanceKwPerK(battery.nominalKwh()));
        this.packLimits = new HeatBalance.Thermostat(heat.heatedToC(), Math.max(heat.heatedToC(), heat.cooledToC()),
                heat.heaterKw(), heat.coolerKw() * PackHeat.COOLER_COP);
        this.cabinC = weather.airC(startMin);
        this.packC = Math.max(packLimits.lowC(), Math.min(packLimits.highC(), weather.meanAirC()));
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
        HeatBalance.Held held = pack.held(packC, airC, ownHeatKw, hours, packLimits);
        packC = held.endC();
        packHeatKw = held.heatKw() + held.coldKw() / PackHeat.COOLER_COP;
    }

    /** Holds the cabin while driving. */
    HeatBalance.Held holdCabin(RunWork run, HeatBalance cabin, double hours) {
        HeatBalance.Held held = cabin.held(cabinC, run.airC(), run.gainsKw(), hours,
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

    /** Stands from one minute to another, plugged in or not. */
    Stand stand(double fromMin, double toMin, boolean plugged, boolean precondition) {
        double heatedFrom = precondition && plugged ? Math.max(fromMin, toMin - PRECONDITION_MIN) : toMin;
        Stand sum = Stand.NONE;
        for (double at = fromMin; at < toMin;) {
            double end = Math.min(at < heatedFrom ? heatedFrom : toMin, at + STEP_MIN);
            sum = sum.plus(step(at, end, plugged, at >= heatedFrom));
            at = end;
        }
        return sum;
    }

    private Stand step(double fromMin, double toMin, boolean plugged, boolean heated) {
        double middle = (fromMin + toMin) / 2;
        double hours = (toMin - fromMin) / 60;
        double airC = weather.airC(middle);
        double packKw = plugged ? heldPackKw(airC, hours) : idlePackKw(airC, hours);
        Cabin cabin = vehicle.body().cabin();
        HeatBalance.Thermostat limits = heated ? cabin.thermostat(vehicle.heater().outputLimitKw())
                : new HeatBalance.Thermostat(cabin.setpointC(), cabin.setpointC(), 0, 0);
        HeatBalance.Held held = cabin.closed().held(cabinC, airC, cabin.gainsKw(0, weather.sunWPerM2(middle)), hours, limits);
        cabinC = held.endC();
        double heatKwh = held.heatKw() * hours;
        double cabinKw = vehicle.heater().electricKwh(held.heatKw(), airC) + held.coldKw() / cabin.coolingCop();
        return new Stand((packKw + cabinKw) * hours, vehicle.heater().fuelL(heatKwh), packKw + cabinKw);
    }

    private double heldPackKw(double airC, double hours) {
        holdPack(airC, 0, hours);
        return packHeatKw;
    }

    private double idlePackKw(double airC, double hours) {
        packC = pack.endC(packC, airC, 0, hours);
        return 0;
    }
}
