package org.amberyard.core.duty;

/** Use of one run of a bus with an engine; its cabin starts as cold as the air and is heated by the coolant first. */
final class EngineRun {
    private EngineRun() {
    }

    static EnergyUse of(EngineSpec vehicle, RunWork run, double factor) {
        VehicleBody body = vehicle.body();
        double hours = run.drive().hours();
        UseSum sum = new UseSum();
        for (int place = 0; place < run.drive().pieces().size(); place++) {
            sum.addWork(run.piece(place, 0), run.drive().pieces().get(place).times());
        }
        sum.addAuxiliary(body.auxiliaryKw() * hours);
        double coolantKw = vehicle.coolantHeatShare() * vehicle.fuelL(sum.drawnKwh(), hours) * vehicle.fuel().kwhPerL() / hours;
        HeatBalance cabin = body.cabin().driving(run.drive().stopsPerHour());
        HeatBalance.Held held = cabin.held(run.airC(), run.airC(), run.gainsKw(), hours,
                body.cabin().thermostat(coolantKw + vehicle.heater().outputLimitKw()));
        sum.addCooling(held.coldKw() * hours / body.cabin().coolingCop());
        sum.addHeat(0, vehicle.heater().fuelL(Math.max(0, held.heatKw() - coolantKw) * hours));
        double steadyKw = body.cabin().holdingKw(cabin, run.airC(), run.gainsKw());
        sum.addHeatShort(Math.max(0, steadyKw - coolantKw - vehicle.heater().outputLimitKw()) * hours);
        return sum.toUse(run.run().distanceKm(), hours, 0, vehicle.fuelL(sum.drawnKwh(), hours)).calibrated(factor);
    }
}
