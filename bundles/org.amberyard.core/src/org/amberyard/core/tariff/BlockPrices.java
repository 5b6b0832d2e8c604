package org.amberyard.core.tariff;

import java.util.ArrayList;
import java.util.List;

/**
 * Price of a charge by blocks of its monthly quantity.
 *
 * @param blocks blocks, rising from 0
 */
public record BlockPrices(List<PriceBlock> blocks) {

    /**
     * Quantity within a block.
     *
     * @param from start of the block
     * @param to end of the block, infinite for the last
     * @param quantity quantity within
     * @param price price within
     */
    public record Slice(double from, double to, double quantity, double price) {
    }

    /**
     * @throws IllegalArgumentException when the blocks do not start at 0 or do not rise
     */
    public BlockPrices {
        blocks = List.copyOf(blocks);
        if (blocks.isEmpty() || blocks.get(0).from() != 0) {
            throw new IllegalArgumentException("first block starts at "
                    + (blocks.isEmpty() ? "nothing" : blocks.get(0).from()) + " but must start at 0");
        }
        for (int b = 1; b < blocks.size(); b++) {
            if (blocks.get(b).from() <= blocks.get(b - 1).from()) {
                throw new IllegalArgumentException("block " + (b + 1) + " starts at " + blocks.get(b).from()
                        + " but must start above " + blocks.get(b - 1).from());
            }
        }
    }

    /** One price for all. */
    public static BlockPrices flat(double price) {
        return new BlockPrices(List.of(new PriceBlock(0, price)));
    }

    /** The first block, and each further one that a quantity reaches. */
    public List<Slice> slices(double quantity) {
        List<Slice> slices = new ArrayList<>();
        for (int b = 0; b < blocks.size() && (b == 0 || quantity > blocks.get(b).from()); b++) {
            double from = blocks.get(b).from();
            double to = b + 1 < blocks.size() ? blocks.get(b + 1).from() : Double.POSITIVE_INFINITY;
            slices.add(new Slice(from, to, Math.min(quantity, to) - from, blocks.get(b).price()));
        }
        return slices;
    }

    /** The block in which the next unit after a quantity falls. */
    public PriceBlock blockAfter(double quantity) {
        PriceBlock reached = blocks.get(0);
        for (PriceBlock block : blocks) {
            reached = block.from() <= quantity ? block : reached;
        }
        return reached;
    }
}
