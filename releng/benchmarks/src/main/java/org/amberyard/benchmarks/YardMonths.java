package org.amberyard.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.amberyard.core.charging.MonthProblem;
import org.amberyard.core.charging.Session;
import org.amberyard.core.charging.StretchProblem;

/** Invented months of a bus yard: three prices by the hour, buses between runs and over night, four to a cabinet. */
final class YardMonths {
    private static final int STEPS_PER_DAY = 96;
    private static final double STEP_HOURS = 0.25;
    private static final int ANY_TIME = 1;
    private static final int PEAK_TIME = 2;

    private final int buses;
    private final boolean building;
    private final Random random = new Random(20);

    YardMonths(int buses, boolean building) {
        this.buses = buses;
        this.building = building;
    }

    /** A month of two kinds of school days under one demand charge. */
    MonthProblem ofTwoDays() {
        return new MonthProblem(List.of(stretch(15, 1, 90), stretch(6, 1, 130)), new double[] {14}, new double[1],
                Double.POSITIVE_INFINITY);
    }

    /** Twelve months of a normal, a coldest and a hottest school day and a weekend, under two demand charges. */
    List<MonthProblem> year() {
        return IntStream.range(0, 12).mapToObj(month -> {
            double winter = Math.abs(month - 6) / 6.0;
            return new MonthProblem(List.of(stretch(15, 1, 80 + 40 * winter), stretch(1, 1, 90 + 60 * winter),
                    stretch(1, 1, 110), stretch(4, 3, 85 + 40 * winter)), new double[] {9, 6}, new double[2],
                    Double.POSITIVE_INFINITY);
        }).toList();
    }

    /** What the energy of the fixed load costs in a month. */
    static double baseCost(StretchProblem stretch) {
        double cost = 0;
        for (int step = 0; step < stretch.steps(); step++) {
            cost += stretch.times() * stretch.stepHours() * stretch.pricePerKwh()[step] * stretch.baseKw()[step];
        }
        return cost;
    }

    private StretchProblem stretch(double times, int days, double kwhPerBus) {
        int steps = days * STEPS_PER_DAY;
        double[] baseKw = new double[steps];
        double[] prices = new double[steps];
        int[] demandSets = new int[steps];
        for (int step = 0; step < steps; step++) {
            double hour = step % STEPS_PER_DAY * STEP_HOURS;
            boolean peak = hour >= 16 && hour < 21;
            baseKw[step] = building ? 40 + 25 * Math.sin((hour - 8) / 24 * 2 * Math.PI) + 5 * random.nextDouble() : 3;
            prices[step] = peak ? 0.31 : hour >= 6 && hour < 23 ? 0.14 : 0.07;
            demandSets[step] = building && peak ? ANY_TIME | PEAK_TIME : ANY_TIME;
        }
        List<Session> sessions = new ArrayList<>();
        for (int bus = 0; bus < buses; bus++) {
            double kwh = kwhPerBus * (0.6 + 0.8 * random.nextDouble());
            int cabinet = building ? bus / 4 : Session.OWN_POWER;
            sessions.add(new Session(36 + random.nextInt(4), 54 + random.nextInt(4), 0.3 * kwh, 19.2, cabinet));
            sessions.add(new Session(66 + random.nextInt(6), steps + 22 + random.nextInt(6), 0.7 * kwh, 19.2, cabinet));
        }
        double[] cabinetKw = building ? IntStream.range(0, (buses + 3) / 4).mapToDouble(c -> 60).toArray() : new double[0];
        return new StretchProblem(times, STEP_HOURS, baseKw, prices, demandSets, sessions, cabinetKw);
    }
}
