package org.amberyard.study.whatif;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.variants.BreakEvenLine;
import org.amberyard.core.variants.BreakEvenSurface;
import org.amberyard.core.variants.BreakEvens;
import org.amberyard.core.variants.BreakEvensAlone;
import org.amberyard.core.whatif.BreakEvenCurve;
import org.amberyard.core.whatif.Grid;
import org.amberyard.study.whatif.BreakEvenPart.Along;

/**
 * The break-evens of a what-if: along each input by itself, along the widest for values of the second, and over a grid of the second
 * and the third; fewer points where more than prices varies.
 */
final class BreakEvenParts {
    private static final int POINTS_BY_PRICES = 9;
    private static final int GRID_BY_PRICES = 5;
    /** Where each variant takes long. */
    private static final int POINTS_WHOLE = 3;

    private final StudyWhatIf whatIf;
    private final int[] widest;

    BreakEvenParts(StudyWhatIf whatIf, int... widest) {
        this.whatIf = whatIf;
        this.widest = widest;
    }

    private int points() {
        return whatIf.byPrices() ? POINTS_BY_PRICES : POINTS_WHOLE;
    }

    private int gridSteps() {
        return whatIf.byPrices() ? GRID_BY_PRICES : POINTS_WHOLE;
    }

    /** The searches of a part. */
    BreakEvenPart of(RunPart part) {
        return new BreakEvenPart(whatIf, switch (part) {
            case BREAK_EVENS_ALONE -> ranges().stream().map(input -> new Along(input, whatIf.uncertain().alone(input, 0))).toList();
            case BREAK_EVEN -> Arrays.stream(whatIf.steps(widest[1], points()))
                    .mapToObj(other -> new Along(widest[0], whatIf.uncertain().alone(widest[1], other))).toList();
            case BREAK_EVEN_SURFACE -> IntStream.range(0, grid().evaluations()).mapToObj(cell -> new Along(widest[0],
                    whatIf.uncertain().alone(widest[1], grid().first(cell), widest[2], grid().second(cell)))).toList();
            default -> throw new IllegalArgumentException(part.label() + " searches for nothing");
        });
    }

    /** Number of searches of a part. */
    int count(RunPart part) {
        return switch (part) {
            case BREAK_EVENS_ALONE -> ranges().size();
            case BREAK_EVEN -> points();
            default -> gridSteps() * gridSteps();
        };
    }

    /** Inputs that may take any value of a range that has a length. */
    private List<Integer> ranges() {
        return IntStream.range(0, whatIf.names().size()).filter(whatIf::varies).boxed().toList();
    }

    private Grid grid() {
        return new Grid(whatIf.steps(widest[1], gridSteps()), whatIf.steps(widest[2], gridSteps()));
    }

    /** What the columns of parts hold. */
    BreakEvens found(Function<RunPart, Optional<double[][]>> columns) {
        return new BreakEvens(columns.apply(RunPart.BREAK_EVENS_ALONE)
                .map(c -> new BreakEvensAlone(ranges(), of(RunPart.BREAK_EVENS_ALONE).of(c))),
                columns.apply(RunPart.BREAK_EVEN).filter(c -> widest.length > 1).map(c -> line(of(RunPart.BREAK_EVEN).of(c))),
                columns.apply(RunPart.BREAK_EVEN_SURFACE).filter(c -> widest.length > 2)
                        .map(c -> surface(of(RunPart.BREAK_EVEN_SURFACE).of(c))));
    }

    private BreakEvenLine line(List<List<BreakEven>> plans) {
        double[] others = whatIf.steps(widest[1], points());
        double[] searched = whatIf.uncertain().searched(widest[0]);
        return new BreakEvenLine(widest[0], widest[1], searched[0], searched[1], plans.stream().map(points -> IntStream
                .range(0, points.size())
                .filter(i -> !points.get(i).stretches().isEmpty()).mapToObj(i -> new BreakEvenCurve(others[i], points.get(i))).toList()).toList());
    }

    private BreakEvenSurface surface(List<List<BreakEven>> plans) {
        double[] searched = whatIf.uncertain().searched(widest[0]);
        return new BreakEvenSurface(widest[0], widest[1], widest[2], grid(), searched[0], searched[1], plans);
    }
}
