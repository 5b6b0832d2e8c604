package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.ConstantPowerTaper;
import org.amberyard.core.consumption.ConsumptionCurve;

/**
 * Drives an electric bus through one day that follows others like it: energy of every run with the temperatures of cabin and
 * pack that the day brings.
 *
 * <p>The bus leaves fully charged with a new pack, as warm as one day and night before have left it, which began at the day's
 * mean air. Every night it stands at a port of the yard, wherever it stands between its runs.
 * Conditions are updated at every stop, so a run that is cut in two at a stop takes what it took whole.
 */
final class ElectricDay {
    private final ElectricSpec vehicle;
    private final List<RunWork> runs;
    private final WeatherDay weather;
    private final YardHabit habit;
    private final double factor;
    private final Optional<ConsumptionCurve> curve;

    /**
     * @param vehicle the bus
     * @param runs its runs of the day in this weather
     * @param weather the day
     * @param habit what the yard does
     * @param factor calibration of the energy by measurements, 1 for none
     * @param curve the consumption curve to go by instead of physics, if so; it holds the heat of logged days, so nothing is
     *            preconditioned beside it
     */
    ElectricDay(ElectricSpec vehicle, List<RunWork> runs, WeatherDay weather, YardHabit habit, double factor,
            Optional<ConsumptionCurve> curve) {
        this.vehicle = vehicle;
        this.runs = runs;
        this.weather = weather;
        this.habit = curve.isPresent() ? habit.withoutPrecondition() : habit;
        this.factor = factor;
        this.curve = curve;
    }

    /** The day's block. */
    DayBlock block() {
        Walk walk = new Walk();
        walk.day(walk.night());
        return new DayBlock(walk.legs, walk.nightPackC);
    }

    private static double arrivalMin(RunWork run) {
        return run.run().departureMin() + run.drive().hours() * 60;
    }

    /** State of the bus on its way. */
    private final class Walk {
        private final ConstantPowerTaper taper = new ConstantPowerTaper(vehicle.battery(), 1);
        private final BusHeat heat = new BusHeat(vehicle, weather, runs.get(0).run().departureMin());
        private final List<DayBlock.Leg> legs = new ArrayList<>();
        private double chargeShare = 1;
        private double nightPackC;

        /** The day and night before: what driving leaves in the pack as heat, run by run, and what the night makes of it. */
        BusHeat.Stand night() {
            for (int place = 0; place < runs.size(); place++) {
                RunWork run = runs.get(place);
                double hours = run.drive().hours();
                heat.holdPack(run.airC(), vehicle.battery().resistanceKwh(run.squareKw2h(), heat.packC()) / hours, hours);
                if (place + 1 < runs.size()) {
                    stand(run, runs.get(place + 1));
                }
            }
            chargeShare = 1;
            double lastMin = arrivalMin(runs.get(runs.size() - 1));
            double nextMin = Math.max(lastMin, runs.get(0).run().departureMin() + DayBlock.DAY_MIN);
            double middleMin = (lastMin + nextMin) / 2;
            BusHeat.Stand evening = heat.stand(lastMin, middleMin, true, habit.withoutPrecondition());
            nightPackC = heat.packC();
            return evening.plus(heat.stand(middleMin, nextMin, true, habit));
        }

        void day(BusHeat.Stand night) {
            BusHeat.Stand before = night;
            for (int place = 0; place < runs.size(); place++) {
                RunWork run = runs.get(place);
                legs.add(leg(run, before));
                before = place + 1 < runs.size() ? stand(run, runs.get(place + 1)) : BusHeat.Stand.NONE;
            }
        }

        private BusHeat.Stand stand(RunWork from, RunWork to) {
            boolean plugged = habit.midday() && from.run().yardAfter();
            double toMin = to.run().departureMin();
            if (plugged) {
                double hours = Math.max(0, toMin - arrivalMin(from)) / 60;
                chargeShare = taper.endShare(chargeShare, habit.portKw(), heat.packC(), hours);
            }
            return heat.stand(arrivalMin(from), toMin, plugged, habit);
        }

        private DayBlock.Leg leg(RunWork run, BusHeat.Stand before) {
            EnergyUse use = curve.isPresent() ? byCurve(run, before) : byPhysics(run, before);
            RunInput plan = run.run();
            return new DayBlock.Leg(plan.name(), plan.departureMin(), arrivalMin(run), plan.yardAfter(),
                    run.airC(), use, heat.packC(), before.lastKw());
        }

        private EnergyUse byPhysics(RunWork run, BusHeat.Stand before) {
            UseSum sum = new UseSum();
            sum.addHeat(0, before.fuelL());
            List<RunDrive.Piece> pieces = run.drive().pieces();
            for (int place = 0; place < pieces.size(); place++) {
                for (double left = pieces.get(place).times(); left > 0; left--) {
                    drive(run, place, Math.min(1, left), sum);
                }
            }
            return sum.toUse(run.run().distanceKm(), run.drive().hours(), before.gridKwh(), 0).calibrated(factor);
        }

        private void drive(RunWork run, int place, double times, UseSum sum) {
            BatterySpec battery = vehicle.battery();
            double hours = times * run.drive().pieces().get(place).steps().totalHours;
            double before = sum.batteryKwh();
            TractiveWork work = run.piece(place, battery.acceptanceKw(heat.packC(), chargeShare));
            sum.addWork(work, times);
            double steadyKwh = comfort(run, place, times, sum);
            double squareKw2h = times * work.squareKw2h() + steadyKwh * steadyKwh / hours
                    + 2 * steadyKwh / hours * times * (work.drawnKwh() - work.recoveredKwh());
            double lossKwh = battery.resistanceKwh(squareKw2h, heat.packC());
            sum.addPackLoss(lossKwh);
            heat.holdPack(run, place, times, lossKwh / hours);
            sum.addPackHeat(heat.packHeatKw() * hours);
            chargeShare -= factor * (sum.batteryKwh() - before) / battery.usableKwh(1);
        }

        /** Auxiliaries, heat and cooling of a piece driven so many times, once at most; their electric energy, kWh. */
        private double comfort(RunWork run, int place, double times, UseSum sum) {
            double hours = times * run.drive().pieces().get(place).steps().totalHours;
            VehicleBody body = vehicle.body();
            Heater heater = vehicle.heater();
            double before = sum.drawnKwh();
            HeatBalance.Held held = heat.holdCabin(run, place, times);
            sum.addAuxiliary(body.auxiliaryKw() * hours);
            sum.addHeat(heater.electricKwh(held.heatKw() * hours, run.airC()), heater.fuelL(held.heatKw() * hours));
            sum.addCooling(held.coldKw() * hours / body.cabin().coolingCop());
            double steadyKw = body.cabin().holdingKw(run.driven().cabin(), run.airC(), run.gainsKw());
            sum.addHeatShort(Math.max(0, steadyKw - heater.outputLimitKw()) * hours);
            return sum.drawnKwh() - before;
        }

        private EnergyUse byCurve(RunWork run, BusHeat.Stand before) {
            EnergyUse use = CurveUse.of(curve.orElseThrow(), run.run().distanceKm(), run.drive().hours(), run.airC(), before,
                    vehicle.heater()).calibrated(factor);
            heat.cabinAtSetpoint();
            heat.holdPack(run.airC(), 0, run.drive().hours());
            chargeShare -= use.batteryKwh() / vehicle.battery().usableKwh(1);
            return use;
        }
    }
}
