package org.amberyard.core.variants;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.whatif.ContourLine;
import org.amberyard.core.whatif.Grid;
import org.amberyard.core.whatif.PlanDraws;

/** Plans over a grid of two uncertain inputs. */
public final class TwoTogether {
    private final int first;
    private final int second;
    private final Grid grid;
    private final double[][] presentCosts;
    private final int baseline;

    public TwoTogether(int first, int second, Grid grid, double[][] presentCosts, int baseline) {
        this.first = first;
        this.second = second;
        this.grid = grid;
        this.presentCosts = presentCosts;
        this.baseline = baseline;
    }

    /** Why there is no grid: it takes two different inputs of a range; empty where there are two, so that it is not worked out yet. */
    public static Optional<String> whyNone(VariedInputs inputs) {
        if (inputs.chosenTwice().isPresent()) {
            return Optional.of("“" + inputs.name(inputs.chosenTwice().getAsInt()) + "” is chosen to run both across and upward; a grid of two "
                    + "inputs takes another one for one of the ways");
        }
        List<String> ranges = IntStream.range(0, inputs.names().size()).filter(inputs::varies).mapToObj(inputs::name).toList();
        return switch (ranges.size()) {
            case 0 -> Optional.of("No uncertain input takes any value of a range; a grid of two inputs takes two of them");
            case 1 -> Optional.of("Only one uncertain input, “" + ranges.get(0) + "”, takes any value of a range; a grid of two inputs takes "
                    + "a second one");
            default -> Optional.empty();
        };
    }

    /** Place of the input that runs along the columns. */
    public int first() {
        return first;
    }

    /** Place of the input that runs along the rows. */
    public int second() {
        return second;
    }

    /** The grid. */
    public Grid grid() {
        return grid;
    }

    /** Present cost of the baseline less that of a plan, by evaluation of the grid. */
    public double[] saving(int plan) {
        return PlanDraws.of(presentCosts).difference(baseline, plan);
    }

    /** Where a plan costs as much as the baseline. */
    public List<ContourLine> breakEven(int plan) {
        return ContourLine.of(grid, saving(plan), 0);
    }
}
