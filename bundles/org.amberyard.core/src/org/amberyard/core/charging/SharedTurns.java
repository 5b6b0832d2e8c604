package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch in which some bus stands at every moment, charged turn after turn as it comes again and again, from one in which no bus
 * stands from before. Each turn begins with the buses that the one before has left at their plugs, as full as they are by then; in it no
 * more is drawn than may be, as all buses of a moment are in it once.
 *
 * <p>Once the buses that a turn leaves are as full as those that an earlier one left, the turns between come again for ever, and the
 * stretch draws their mean. Where the need is more than a turn can bring, what is left waits until its buses leave without it. Turns that
 * have not come to repeat after {@value #MOST_TURNS} are so near to it that the mean of the later half stands for them: no mean of turns
 * draws more than any of them may.
 */
final class SharedTurns {
    private static final int MOST_TURNS = 200;
    /** State of charge that makes no difference. */
    private static final double SAME_SHARE = 1e-12;

    private final SharedRun run;
    private final List<PlugCharge> charges;
    private final double[] laterMin;
    private final double startMin;
    private final StepGrid grid;
    /** Power at the meter by turn, bus and step, kW. */
    private final List<double[][]> turns = new ArrayList<>();
    /** State of charge by turn and bus where the bus stands over the end of the turn, else 0. */
    private final List<double[]> left = new ArrayList<>();

    /**
     * @param laterMin by bus how many minutes after those of its stay it comes in a turn that begins at the start
     * @param startMin start of the turns, minutes into the stretch
     */
    SharedTurns(SharedRun run, List<PlugCharge> charges, double[] laterMin, double startMin, StepGrid grid) {
        this.run = run;
        this.charges = charges;
        this.laterMin = laterMin;
        this.startMin = startMin;
        this.grid = grid;
    }

    void charge() {
        PlugCharge[] standing = new PlugCharge[charges.size()];
        int first = -1;
        while (first < 0 && turns.size() < MOST_TURNS) {
            standing = turn(standing);
            first = sameBefore();
        }
        int from = first < 0 ? MOST_TURNS / 2 : first + 1;
        for (int place = 0; place < standing.length; place++) {
            charges.get(place).take(mean(place, from));
        }
    }

    /** Charges a turn and answers by place the buses that it leaves at their plugs. */
    private PlugCharge[] turn(PlugCharge[] before) {
        double endMin = startMin + grid.lengthMin();
        double[][] meterKw = new double[before.length][grid.steps()];
        PlugCharge[] standing = new PlugCharge[before.length];
        for (int place = 0; place < before.length; place++) {
            if (before[place] != null) {
                run.add(before[place].booking(meterKw[place]), laterMin[place] - grid.lengthMin());
            }
            PlugCharge charge = charges.get(place).booking(meterKw[place]);
            run.add(charge, laterMin[place]);
            standing[place] = charge.plugged.chargeToMin() + laterMin[place] > endMin ? charge : null;
        }
        run.run(startMin, endMin);
        turns.add(meterKw);
        double[] shares = new double[standing.length];
        for (int place = 0; place < shares.length; place++) {
            shares[place] = standing[place] == null ? 0 : standing[place].chargeShare();
        }
        left.add(shares);
        return standing;
    }

    /** The latest earlier turn that has left its buses as the last has; negative where none has. */
    private int sameBefore() {
        int last = left.size() - 1;
        int turn = last - 1;
        while (turn >= 0 && !same(left.get(turn), left.get(last))) {
            turn--;
        }
        return turn;
    }

    private static boolean same(double[] one, double[] other) {
        for (int place = 0; place < one.length; place++) {
            if (Math.abs(one[place] - other[place]) > SAME_SHARE) {
                return false;
            }
        }
        return true;
    }

    /** Mean power of a bus over the turns from one on, kW by step. */
    private double[] mean(int place, int from) {
        double[] mean = new double[grid.steps()];
        for (double[][] turn : turns.subList(from, turns.size())) {
            for (int step = 0; step < mean.length; step++) {
                mean[step] += turn[place][step] / (turns.size() - from);
            }
        }
        return mean;
    }
}
