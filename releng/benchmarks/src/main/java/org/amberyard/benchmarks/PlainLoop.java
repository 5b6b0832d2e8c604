package org.amberyard.benchmarks;

import java.util.List;
import org.amberyard.core.duty.DrivelineLoss;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.RoadLoad;
import org.amberyard.core.duty.SpeedTrace;

/** The arithmetic of driving in one loop over flat arrays, as one would write it in C: the yardstick of the duty benchmarks. */
final class PlainLoop {
    private final double[] seconds;
    private final double[] speed;
    private final double[] acceleration;
    private final double[] cosine;
    private final double[] sine;
    private final RoadLoad load;
    private final DrivelineLoss loss;
    private final double limitW;
    private final double cutoffMps;
    private final double brakingLimitN;

    PlainLoop(List<SpeedTrace> traces, ElectricSpec bus) {
        int steps = traces.stream().mapToInt(SpeedTrace::steps).sum();
        seconds = new double[steps];
        speed = new double[steps];
        acceleration = new double[steps];
        cosine = new double[steps];
        sine = new double[steps];
        int place = 0;
        for (SpeedTrace trace : traces) {
            for (int step = 0; step < trace.steps(); step++) {
                seconds[place] = trace.durationS(step);
                speed[place] = trace.meanSpeedMps(step);
                acceleration[place] = trace.accelerationMps2(step);
                cosine[place] = 1 / Math.sqrt(1 + trace.grade(step) * trace.grade(step));
                sine[place++] = trace.grade(step) * cosine[place - 1];
            }
        }
        load = bus.body().roadLoad(1500, 18, 300);
        loss = bus.body().driveline();
        limitW = bus.recovery().powerLimitKw() * 1000;
        cutoffMps = bus.recovery().cutoffKmh() / 3.6;
        brakingLimitN = load.massKg() * load.rotatingMassFactor() * bus.recovery().decelerationMps2();
    }

    double run() {
        double weightN = load.massKg() * 9.80665;
        double rollingN = weightN * load.rollingResistance();
        double inertiaKg = load.massKg() * load.rotatingMassFactor();
        double dragFactor = 0.5 * load.airDensityKgPerM3() * load.dragAreaM2();
        double usefulPerSpeed = (1 - loss.gearShare()) / (2 * loss.copperWPerN2());
        double drawn = 0;
        double recovered = 0;
        double square = 0;
        double rollingSum = 0;
        double dragSum = 0;
        double climbSum = 0;
        double friction = 0;
        double losses = 0;
        double peak = 0;
        for (int i = 0; i < seconds.length; i++) {
            double v = speed[i];
            if (!(v > 0)) {
                continue;
            }
            double metres = v * seconds[i];
            double roll = rollingN * cosine[i];
            double drag = dragFactor * v * v;
            double climb = weightN * sine[i];
            double force = roll + drag + climb + inertiaKg * acceleration[i];
            double motor = force;
            if (force < 0) {
                double taken = 0;
                if (v >= cutoffMps) {
                    double useful = Math.min(Math.min(-force, brakingLimitN), usefulPerSpeed * v);
                    peak = Math.max(peak, useful * v);
                    taken = Math.min(useful, limitW / v);
                }
                motor = -taken;
            }
            double lost = loss.constantW() + v * (loss.perSpeedN() + loss.perCubedSpeed() * v * v
                    + loss.gearShare() * Math.abs(motor)) + loss.copperWPerN2() * motor * motor;
            double power = motor * v + lost;
            rollingSum += roll * metres;
            dragSum += drag * metres;
            climbSum += climb * metres;
            friction += (motor - force) * metres;
            losses += lost * seconds[i];
            square += power * power * seconds[i];
            if (power >= 0) {
                drawn += power * seconds[i];
            } else {
                recovered -= power * seconds[i];
            }
        }
        return drawn - recovered + square + rollingSum + dragSum + climbSum + friction + losses + peak;
    }
}
