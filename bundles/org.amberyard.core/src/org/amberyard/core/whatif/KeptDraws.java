package org.amberyard.core.whatif;

import java.util.ArrayList;
import java.util.List;

/** Keeps the results of all draws of a run, to be read by result and draw, or given to others again. */
public final class KeptDraws implements BlockSink {
    private final List<Block> blocks = new ArrayList<>();

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

    /** Gives all blocks to a sink that has seen none of them. */
    public void replay(BlockSink sink) {
        blocks.forEach(sink::take);
    }
}
