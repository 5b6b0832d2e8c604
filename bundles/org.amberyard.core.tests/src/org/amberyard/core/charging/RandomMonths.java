package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Months drawn at random from a seed. */
final class RandomMonths {
    private static final double[] PRICES = {0.05, 0.08, 0.12, 0.21, 0.34};

    private RandomMonths() {
    }

    /** A month of a few short stretches with everything in it that can hold a schedule back; it may be infeasible. */
    static MonthProblem small(long seed) {
        Random random = new Random(seed);
        int charges = random.nextInt(4);
        List<StretchProblem> stretches = new ArrayList<>();
        for (int stretch = 1 + random.nextInt(3); stretch > 0; stretch--) {
            stretches.add(stretch(random, 2 + random.nextInt(9), 1 + random.nextInt(5), charges));
        }
        double[] prices = random.doubles(charges, 0, 2).map(p -> random.nextInt(6) == 0 ? 0 : p).toArray();
        double[] floors = random.doubles(charges, 0, 60).map(f -> random.nextBoolean() ? 0 : f).toArray();
        return new MonthProblem(stretches, prices, floors, random.nextInt(3) == 0 ? 60 + 60 * random.nextDouble()
                : Double.POSITIVE_INFINITY);
    }

    private static StretchProblem stretch(Random random, int steps, int buses, int charges) {
        double[] cabinetKw = random.doubles(random.nextInt(3), 5, 60).toArray();
        boolean flatBase = random.nextBoolean();
        double flatKw = random.nextInt(20);
        double[] baseKw = random.doubles(steps, 0, 40).map(kw -> flatBase ? flatKw : kw).toArray();
        double[] prices = random.ints(steps, 0, PRICES.length).mapToDouble(p -> PRICES[p]).toArray();
        if (random.nextInt(8) == 0) {
            prices[0] = -0.02;
        }
        int[] demandSets = random.ints(steps, 0, 1 << charges).toArray();
        List<Session> sessions = new ArrayList<>();
        for (int bus = 0; bus < buses; bus++) {
            int from = random.nextInt(steps);
            int length = 1 + random.nextInt(steps);
            double limitKw = 5 + random.nextInt(30);
            double share = random.nextInt(10) == 0 ? 0 : random.nextInt(10) == 0 ? 1 : 0.7 * random.nextDouble();
            int cabinet = random.nextInt(cabinetKw.length + 1) - 1;
            Session whole = new Session(from, from + length, share * length * 0.5 * limitKw, limitKw, cabinet);
            sessions.add(random.nextBoolean() ? whole : new Session(from, from + length, 0.6 * whole.meterKwh(), limitKw, cabinet,
                    random.nextDouble(), random.doubles(random.nextInt(Math.min(4, length + 1))).boxed().toList()));
            if (random.nextInt(5) == 0) {
                sessions.add(sessions.get(sessions.size() - 1));
            }
        }
        return new StretchProblem(1 + random.nextInt(20), 0.5, baseKw, prices, demandSets, sessions, cabinetKw);
    }

    /** A month of a yard: days of 96 steps, two demand charges, cabinets for four and a building on the meter. */
    static MonthProblem yard(long seed, int buses, int stretches) {
        Random random = new Random(seed);
        List<StretchProblem> days = new ArrayList<>();
        for (int day = 0; day < stretches; day++) {
            days.add(yardDay(random, buses));
        }
        return new MonthProblem(days, new double[] {4 + 10 * random.nextDouble(), 8 * random.nextDouble()}, new double[2],
                Double.POSITIVE_INFINITY);
    }

    private static StretchProblem yardDay(Random random, int buses) {
        double[] baseKw = random.doubles(96, 20, 80).toArray();
        double[] prices = new double[96];
        int[] demandSets = new int[96];
        for (int step = 0; step < 96; step++) {
            boolean peak = step >= 64 && step < 84;
            prices[step] = peak ? 0.3 : step < 24 ? 0.08 : 0.15;
            demandSets[step] = peak ? 3 : 1;
        }
        List<Session> sessions = new ArrayList<>();
        for (int bus = 0; bus < buses; bus++) {
            sessions.add(new Session(36 + random.nextInt(6), 52 + random.nextInt(6), 30 * random.nextDouble(), 19.2, bus / 4));
            sessions.add(new Session(62 + random.nextInt(10), 118 + random.nextInt(6), 30 + 90 * random.nextDouble(), 19.2,
                    bus / 4));
        }
        double[] cabinetKw = random.doubles((buses + 3) / 4, 45, 77).toArray();
        return new StretchProblem(1 + random.nextInt(15), 0.25, baseKw, prices, demandSets, sessions, cabinetKw);
    }
}
