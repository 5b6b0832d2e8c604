package org.amberyard.core.whatif;

import java.util.function.Function;
import org.amberyard.core.math.Checks;

/**
 * Draws are enough when the standard error of the mean of a result is small enough. It is asked at the end of the block
 * that brings the least number of draws, and from then on each time they have doubled: asked more often, a run would end
 * at the first error that is too small by chance. The number of draws does not depend on threads. To go on with a run, it
 * is given the blocks of the run so far first.
 */
public final class StandardErrorRule implements BlockSink {
    private final Function<Block, double[]> result;
    private final double largest;
    private final MeanError error;
    private long asked;

    /**
     * A rule that has seen no draw.
     *
     * @param result the result in each draw of a block
     * @param largest standard error that is small enough, in the unit of the result
     * @param leastDraws draws that are wanted in any case, 1 or more, against a small scatter of the first ones by chance
     * @param replicates independent samples that the draws are taken from in turn, see {@link ReplicatedPoints}; 1 for
     *            independent draws
     */
    public StandardErrorRule(Function<Block, double[]> result, double largest, int leastDraws, int replicates) {
        this.result = result;
        this.largest = Checks.positive("Standard error", largest);
        this.asked = Checks.atLeast("Least number of draws", leastDraws, 1);
        this.error = new MeanError(replicates);
    }

    @Override
    public boolean take(Block block) {
        error.add(result.apply(block), block.firstDraw(), 0, block.draws());
        if (error.draws() < asked) {
            return false;
        }
        while (asked <= error.draws()) {
            asked *= 2;
        }
        return error.standardError() <= largest;
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
