package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargeSpan;
import org.amberyard.core.yard.StretchLoad;
import org.amberyard.core.yard.YardYear;

/**
 * Load behind the yard's service on a stretch of days, layer on layer: the building below, then what the ports draw at rest,
 * heat, and the charging of each bus in the order in which they start after noon.
 */
final class DayLoad {

    private final YardYear yard;
    private final StretchLoad stretch;
    private final List<Layer> layers = new ArrayList<>();

    /**
     * A layer.
     *
     * @param label what draws
     * @param bus place among the yard's buses; -1 for a layer of no single bus
     * @param kw power by step, kW
     */
    record Layer(String label, int bus, double[] kw) {

        /** Steps from noon to the first in which it draws; all of a turn when it never does. */
        private int startAfterNoon(int stepsPerDay) {
            return IntStream.range(0, kw.length).filter(s -> ChargeSpan.draws(kw[(s + stepsPerDay / 2) % kw.length]))
                    .findFirst()
                    .orElse(kw.length);
        }
    }

    DayLoad(YardYear yard, StretchLoad stretch) {
        this.yard = yard;
        this.stretch = stretch;
        double[] standby = new double[steps()];
        Arrays.fill(standby, stretch.standbyKw());
        layers.add(new Layer("Building", -1, stretch.buildingKw()));
        layers.add(new Layer("Ports at rest", -1, standby));
        layers.add(new Layer("Heat of buses", -1, heat()));
        int stepsPerDay = steps() / stretch.kind().days().size();
        IntStream.range(0, yard.input().buses().size()).mapToObj(this::charging)
                .filter(l -> Arrays.stream(l.kw()).anyMatch(ChargeSpan::draws))
                .sorted(Comparator.comparingInt(l -> l.startAfterNoon(stepsPerDay))).forEach(layers::add);
    }

    private double[] heat() {
        double[] sum = new double[steps()];
        Arrays.setAll(sum, this::heatKw);
        return sum;
    }

    private Layer charging(int bus) {
        double[] kw = stretch.busKw(bus);
        double[] heat = stretch.heatKw().get(bus);
        Arrays.setAll(kw, s -> Math.max(0, kw[s] - heat[s]));
        return new Layer(yard.input().buses().get(bus).name(), bus, kw);
    }

    int steps() {
        return stretch.buildingKw().length;
    }

    int stepMin() {
        return yard.input().stepMin();
    }

    List<Layer> layers() {
        return layers;
    }

    /** Layers of buses. */
    List<Layer> buses() {
        return layers.stream().filter(l -> l.bus() >= 0).toList();
    }

    /** Load at the meter of charging by step, kW. */
    double[] meterKw() {
        return yard.input().metering().shared() ? stretch.serviceKw() : stretch.yardKw();
    }

    /** The step of the highest load at the meter, the first of equals. */
    int peakStep() {
        double[] kw = meterKw();
        int peak = 0;
        for (int step = 1; step < kw.length; step++) {
            peak = kw[step] > kw[peak] ? step : peak;
        }
        return peak;
    }

    /** Heat of all buses in a step, kW. */
    double heatKw(int step) {
        return stretch.heatKw().stream().mapToDouble(bus -> bus[step]).sum();
    }

    /** Highest load behind the service, kW. */
    double servicePeakKw() {
        return Arrays.stream(stretch.serviceKw()).max().orElse(0);
    }

    /** Buses that charge in a step. */
    List<String> chargingAt(int step) {
        return buses().stream().filter(l -> ChargeSpan.draws(l.kw()[step])).map(Layer::label).sorted().toList();
    }
}
