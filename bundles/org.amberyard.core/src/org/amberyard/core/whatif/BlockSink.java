package org.amberyard.core.whatif;

import java.util.List;

/** Takes the results of draws, block by block in the order of the draws, on one thread. */
@FunctionalInterface
public interface BlockSink {

    /**
     * Takes a block.
     *
     * @return true when these draws are enough and none behind them is wanted
     */
    boolean take(Block block);

    /** All of several sinks, each given every block; enough as soon as it is for one of them. */
    static BlockSink of(BlockSink... sinks) {
        List<BlockSink> all = List.of(sinks);
        return block -> all.stream().map(sink -> sink.take(block)).reduce(false, Boolean::logicalOr);
    }
}
