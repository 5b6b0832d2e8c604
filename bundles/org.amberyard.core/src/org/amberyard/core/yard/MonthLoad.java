package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.LoadDay;
import org.amberyard.core.tariff.MeterMonth;

/**
 * Load of the yard in one month.
 *
 * @param month month, 0 for January
 * @param stretches stretches of service
 * @param idle days on which no route is driven
 * @param costGap how far the bill of the month at most lies above the lowest that any schedule has which serves the same buses
 *            at the same plugs, money at prices of the base date, demand in the proportion of the yard's year; under a ratchet
 *            the months of the year together; empty where it is not known, and for policies that do not look at prices
 */
public record MonthLoad(int month, List<StretchLoad> stretches, List<IdleDay> idle, OptionalDouble costGap) {

    /**
     * Days on which no route is driven.
     *
     * @param dayClass kind of day
     * @param days how many
     * @param standbyKw power that the ports draw, kW
     * @param buildingKw load of the building by step, kW
     * @param buildingPeak true for the day of the building's highest demand
     */
    public record IdleDay(DayClass dayClass, double days, double standbyKw, double[] buildingKw, boolean buildingPeak) {

        /** Words for tables and charts. */
        String label() {
            return "free " + dayClass.label() + (buildingPeak ? " of the building's peak" : "");
        }

        double[] loadKw(boolean shared) {
            double[] sum = shared ? buildingKw.clone() : new double[buildingKw.length];
            for (int step = 0; step < sum.length; step++) {
                sum[step] += standbyKw;
            }
            return sum;
        }
    }

    public MonthLoad {
        stretches = List.copyOf(stretches);
        idle = List.copyOf(idle);
    }

    /** The same with another gap. */
    MonthLoad withGap(OptionalDouble gap) {
        return new MonthLoad(month, stretches, idle, gap);
    }

    /** True when the same buses stand at the same plugs at the same times. */
    boolean standsAs(MonthLoad other) {
        return stretches.stream().map(s -> s.charging().assignment()).toList()
                .equals(other.stretches.stream().map(s -> s.charging().assignment()).toList());
    }

    /** What the meter of charging counts. */
    public MeterMonth metered(boolean shared) {
        return metered(shared, stretchesKw(shared));
    }

    /** Loads of its stretches at the meter, kW. */
    List<double[]> stretchesKw(boolean shared) {
        return stretchesKw(shared, chargingKw());
    }

    /** Power of charging on its stretches, kW. */
    List<double[]> chargingKw() {
        return stretches.stream().map(s -> s.schedule().totalKw()).toList();
    }

    /** Loads of its stretches at the meter where the power of charging is known, kW. */
    List<double[]> stretchesKw(boolean shared, List<double[]> chargingKw) {
        List<double[]> loads = new ArrayList<>(chargingKw.size());
        for (int place = 0; place < chargingKw.size(); place++) {
            loads.add(stretches.get(place).loadKw(shared, chargingKw.get(place)));
        }
        return loads;
    }

    /** What the meter counts with loads of its stretches, kW. */
    MeterMonth metered(boolean shared, List<double[]> stretchesKw) {
        List<LoadDay> days = new ArrayList<>();
        for (int place = 0; place < stretches.size(); place++) {
            addDays(stretches.get(place), stretchesKw.get(place), days);
        }
        idle.forEach(d -> days.add(new LoadDay(d.label(), d.dayClass(), d.days(), d.loadKw(shared))));
        return new MeterMonth(month, days);
    }

    /** What the meter would count without charging. */
    MeterMonth buildingOnly() {
        List<LoadDay> days = new ArrayList<>();
        stretches.forEach(s -> addDays(s, s.buildingKw(), days));
        idle.forEach(d -> days.add(new LoadDay(d.label(), d.dayClass(), d.days(), d.buildingKw())));
        return new MeterMonth(month, days);
    }

    private static void addDays(StretchLoad stretch, double[] kw, List<LoadDay> to) {
        List<DayClass> days = stretch.kind().days();
        int steps = kw.length / days.size();
        for (int day = 0; day < days.size(); day++) {
            double[] ofDay = Arrays.copyOfRange(kw, day * steps, (day + 1) * steps);
            to.add(new LoadDay(stretch.dayLabel(day), days.get(day), stretch.times(), ofDay));
        }
    }

    /** Highest demand of charging, heat and standby, kW. */
    public double yardPeakKw() {
        return yardPeakKw(stretchesKw(false));
    }

    /** The same of loads of its stretches, kW. */
    double yardPeakKw(List<double[]> stretchesKw) {
        double standbyKw = idle.stream().mapToDouble(IdleDay::standbyKw).max().orElse(0);
        return Math.max(standbyKw, stretchesKw.stream().mapToDouble(MonthLoad::highest).max().orElse(0));
    }

    /** Loads behind the service by step, the building included, of each stretch and of each kind of day without routes, kW. */
    public List<double[]> serviceKw() {
        return serviceKw(stretchesKw(true)).toList();
    }

    private Stream<double[]> serviceKw(List<double[]> stretchesKw) {
        return Stream.concat(stretchesKw.stream(), idle.stream().map(d -> d.loadKw(true)));
    }

    /** Highest demand behind the service, the building included, with loads of its stretches there, kW. */
    double servicePeakKw(List<double[]> stretchesKw) {
        return serviceKw(stretchesKw).mapToDouble(MonthLoad::highest).max().orElse(0);
    }

    /** The highest of some powers; 0 of none. */
    static double highest(double[] kw) {
        double highest = kw.length == 0 ? 0 : kw[0];
        for (double one : kw) {
            highest = Math.max(highest, one);
        }
        return highest;
    }

    /** Plug swaps of the month. */
    public double swaps() {
        return stretches.stream().mapToDouble(s -> s.times() * s.charging().assignment().swaps()).sum();
    }

    /**
     * Idle days of a calendar's month.
     *
     * @param peakDay true when one of them is the day of the building's highest demand, because no stretch holds it
     */
    static List<IdleDay> idle(Map<DayClass, Double> days, double standbyKw, BuildingLoad building, int month, boolean peakDay) {
        List<IdleDay> idle = new ArrayList<>();
        days.entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(e -> {
            double peaks = peakDay && e.getKey() == DayClass.WEEKDAY ? Math.min(1, e.getValue()) : 0;
            addIdle(new IdleDay(e.getKey(), peaks, standbyKw, building.peakDay(month), true), idle);
            addIdle(new IdleDay(e.getKey(), e.getValue() - peaks, standbyKw, building.day(month, e.getKey()), false), idle);
        });
        return idle;
    }

    private static void addIdle(IdleDay day, List<IdleDay> to) {
        if (day.days() > 0) {
            to.add(day);
        }
    }
}
