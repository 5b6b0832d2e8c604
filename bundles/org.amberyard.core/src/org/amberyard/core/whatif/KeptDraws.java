package org.amberyard.core.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.math.Checks;

/** Keeps the results of all draws of a run, to be read by result and draw, or given to others again. */
public final class KeptDraws implements BlockSink {
    private final List<Block> blocks = new ArrayList<>();

    /**
     * Draws kept from an earlier run, in the blocks in which that run handed them on, so that a run that goes on with
     * them ends where it would have ended without the break.
     *
     * @param columns by result and draw
     * @param blockDraws draws of a block
     */
    public static KeptDraws of(double[][] columns, int blockDraws) {
        Checks.atLeast("Draws of a block", blockDraws, 1);
        KeptDraws kept = new KeptDraws();
        int draws = columns[0].length;
        for (int first = 0; first < draws; first = end(first, blockDraws, draws)) {
            int from = first;
            int to = end(first, blockDraws, draws);
            kept.take(new Block(from, Arrays.stream(columns).map(c -> Arrays.copyOfRange(c, from, to))
                    .toArray(double[][]::new)));
        }
        return kept;
    }

    private static int end(int first, int blockDraws, int draws) {
        return (int) Math.min(draws, (long) first + blockDraws);
    }

    /**
     * Keeps a block; never says that draws are enough.
     *
     * @throws IllegalArgumentException when its draws do not follow those before it
     */
    @Override
    public boolean take(Block block) {
        if (block.firstDraw() != draws()) {
            throw new IllegalArgumentException("First draw of a block is " + block.firstDraw() + " but must be "
                    + draws());
        }
        blocks.add(block);
        return false;
    }

    /** Number of draws. */
    public int draws() {
        return blocks.isEmpty() ? 0 : blocks.get(blocks.size() - 1).endDraw();
    }

    /** A result in each draw. */
    public double[] column(int column) {
        double[] values = new double[draws()];
        for (Block block : blocks) {
            System.arraycopy(block.columns()[column], 0, values, block.firstDraw(), block.draws());
        }
        return values;
    }

    /** All results, by result and draw; nothing of no draw. */
    public double[][] columns() {
        int results = blocks.isEmpty() ? 0 : blocks.get(0).columns().length;
        return IntStream.range(0, results).mapToObj(this::column).toArray(double[][]::new);
    }

    /** Gives all blocks to a sink that has seen none of them. */
    public void replay(BlockSink sink) {
        blocks.forEach(sink::take);
    }
}
