package org.amberyard.core.yard;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargeSchedule;
import org.amberyard.core.charging.ChargeShortfall;
import org.amberyard.core.charging.PlugIn;
import org.amberyard.core.charging.Plugged;
import org.amberyard.core.charging.YardCharging;

/**
 * Load of the yard on one stretch of days. Arrays are by step and not to be changed.
 *
 * @param service month of service
 * @param kind kind of stretch
 * @param charging who stands at which plug when
 * @param schedule what is charged when
 * @param base load that cannot be moved
 */
public record StretchLoad(ServiceMonth service, StretchKind kind, YardCharging charging, ChargeSchedule schedule, BaseLoad base) {

    /** The same with another schedule. */
    StretchLoad with(ChargeSchedule other) {
        return new StretchLoad(service, kind, charging, other, base);
    }

    /** How often it stands in the month. */
    public double times() {
        return service.times().get(kind);
    }

    /** Heat of each bus at the meter, in the order of the yard's buses, kW. */
    public List<double[]> heatKw() {
        return base.heat().stream().map(MeterHeat::kw).toList();
    }

    /** Words for tables and charts. */
    public String label() {
        return service.extendedYear() ? kind.label() + ", extended year" : kind.label();
    }

    /** Words for one of its days. */
    public String dayLabel(int day) {
        return kind.days().size() == 1 ? label() : kind.days().get(day).label() + " of " + label();
    }

    /** Its day with the highest load behind the service, from 0; the first of equals. */
    public int highestDay() {
        double[] kw = serviceKw();
        int step = IntStream.range(0, kw.length).boxed().max(Comparator.<Integer>comparingDouble(s -> kw[s])
                .thenComparing(Comparator.reverseOrder())).orElseThrow();
        return step * kind.days().size() / kw.length;
    }

    /** Load of the building, kW. */
    public double[] buildingKw() {
        return base.buildingKw();
    }

    /** Power that the ports draw at all hours, kW. */
    public double standbyKw() {
        return base.standbyKw();
    }

    /** Load that cannot be moved, kW: heat, standby and, when they share the meter, the building; not to be changed. */
    double[] baseKw(boolean shared) {
        return base.kw(shared);
    }

    /** Load of charging with heat and standby, kW. */
    public double[] yardKw() {
        return loadKw(false);
    }

    /** Load behind the service, the building included, kW. */
    public double[] serviceKw() {
        return loadKw(true);
    }

    /** Load at the meter, kW. */
    double[] loadKw(boolean shared) {
        return loadKw(shared, schedule.totalKw());
    }

    /** The same where the power of charging is known, kW. */
    double[] loadKw(boolean shared, double[] chargingKw) {
        double[] sum = baseKw(shared).clone();
        add(chargingKw, sum);
        return sum;
    }

    private static void add(double[] more, double[] sum) {
        for (int step = 0; step < sum.length; step++) {
            sum[step] += more[step];
        }
    }

    /** Load of one bus, charging and heat, at the meter, kW; by its place among the yard's buses. */
    public double[] busKw(int bus) {
        double[] sum = base.heat().get(bus).kw().clone();
        List<PlugIn> plugIns = charging.stretch().plugIns();
        for (int place = 0; place < plugIns.size(); place++) {
            if (plugIns.get(place).bus() == bus) {
                add(schedule.meterKw()[place], sum);
            }
        }
        return sum;
    }

    /** Energy of each bus, charging and heat, at the meter, kWh. */
    double[] busesKwh(int buses) {
        double[] sums = new double[buses];
        for (int bus = 0; bus < buses; bus++) {
            sums[bus] = base.heat().get(bus).kwh();
        }
        List<PlugIn> plugIns = charging.stretch().plugIns();
        for (int place = 0; place < plugIns.size(); place++) {
            sums[plugIns.get(place).bus()] += schedule.meterKwh(place);
        }
        return sums;
    }

    /** Energy that each bus lacks when it leaves, at the meter, kWh. */
    double[] missingKwh(int buses) {
        double[] sums = new double[buses];
        if (schedule.shortfalls().isEmpty()) {
            return sums;
        }
        double[] efficiencies = efficiencies(charging, buses);
        for (int bus = 0; bus < buses; bus++) {
            sums[bus] = missingInBatteryKwh(bus) / efficiencies[bus];
        }
        return sums;
    }

    private double missingInBatteryKwh(int bus) {
        return schedule.shortfalls().stream().filter(s -> s.plugIn().bus() == bus).mapToDouble(ChargeShortfall::shortKwh).sum();
    }

    /** Efficiencies of the ports at which so many buses stand first, in one pass; of the yard's first where a bus stands at none. */
    static double[] efficiencies(YardCharging charging, int buses) {
        double[] all = new double[buses];
        if (buses > 0) {
            Arrays.fill(all, charging.units().get(0).port().efficiency());
        }
        List<Plugged> plugged = charging.assignment().plugged();
        for (int last = plugged.size() - 1; last >= 0; last--) {
            Plugged one = plugged.get(last);
            all[one.plugIn().bus()] = charging.units().get(one.unit()).port().efficiency();
        }
        return all;
    }

    /** Buses at plugs. */
    public List<Plugged> plugged() {
        return charging.assignment().plugged();
    }
}
