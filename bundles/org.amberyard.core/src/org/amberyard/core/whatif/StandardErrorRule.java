package org.amberyard.core.whatif;

import java.util.function.Function;
import org.amberyard.core.math.Checks;

/**
 * Draws are enough when the standard error of the mean of a result is small enough. It is asked at the end of each
 * block, so that the number of draws does not depend on threads. To go on with a run, it is given the blocks of the run
 * so far first.
 */
public final class StandardErrorRule implements BlockSink {
    private final Function<Block, double[]> result;
    private final double largest;
    private final int leastDraws;
    private final MeanError error;

    /**
     * A rule that has seen no draw.
     *
     * @param result the result in each draw of a block
     * @param largest standard error that is small enough, in the unit of the result
     * @param leastDraws draws that are wanted in any case, against a small scatter of the first ones by chance
     * @param replicates independent samples that the draws are taken from in turn, see {@link ReplicatedPoints}; 1 for
     *            independent draws
     */
    public StandardErrorRule(Function<Block, double[]> result, double largest, int leastDraws, int replicates) {
        this.result = result;
        this.largest = Checks.positive("Standard error", largest);
        this.leastDraws = leastDraws;
        this.error = new MeanError(replicates);
    }

    @Override
    public boolean take(Block block) {
        error.add(result.apply(block), block.firstDraw(), 0, block.draws());
        return error.draws() >= leastDraws && error.standardError() <= largest;
    }

    /** Mean of the result so far. */
    public double mean() {
        return error.mean();
    }

    /** Standard error of the mean so far; not a number while it cannot be told. */
    public double standardError() {
        return error.standardError();
    }
}
