package org.amberyard.core.tariff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Price of a charge by blocks of its monthly quantity.
 *
 * @param blocks blocks, rising from 0
 */
public record BlockPrices(List<PriceBlock> blocks) {

    /**
     * Quantity within a block.
     *
     * @param block the block
     * @param next the block that ends it; none after the last
     * @param quantity quantity within
     */
    record Slice(PriceBlock block, Optional<PriceBlock> next, double quantity) {
    }

    /**
     * @throws IllegalArgumentException when the blocks do not start at 0 or do not rise
     */
    public BlockPrices {
        blocks = List.copyOf(blocks);
        if (blocks.isEmpty() || blocks.get(0).start(1) != 0) {
            throw new IllegalArgumentException("blocks " + blocks + " must start with one from 0");
        }
        for (int b = 1; b < blocks.size(); b++) {
            if (!blocks.get(b).above(blocks.get(b - 1))) {
                throw new IllegalArgumentException("block " + (b + 1) + " starts at " + text(blocks.get(b))
                        + " but must start above " + text(blocks.get(b - 1)));
            }
        }
    }

    private static String text(PriceBlock block) {
        return block.from() + (block.fromPerKw() > 0 ? " and " + block.fromPerKw() + " per kW" : "");
    }

    /** One price for all. */
    public static BlockPrices flat(double price) {
        return new BlockPrices(List.of(new PriceBlock(0, price)));
    }

    /** The same prices where blocks begin at a share of what a month's begin at. */
    BlockPrices over(double months) {
        return months == 1 ? this : new BlockPrices(blocks.stream()
                .map(b -> new PriceBlock(months * b.from(), months * b.fromPerKw(), b.price())).toList());
    }

    /** True when blocks depend on the billed demand. */
    boolean byDemand() {
        return blocks.stream().anyMatch(b -> b.fromPerKw() > 0);
    }

    /** True when no block is cheaper than the one before and none depends on the demand: more never costs less by the unit. */
    boolean rising() {
        return !byDemand() && IntStream.range(1, blocks.size()).allMatch(b -> blocks.get(b).price() >= blocks.get(b - 1).price());
    }

    /** The first block, and each further one that a quantity reaches at a billed demand. */
    List<Slice> slices(double quantity, double billedKw) {
        List<Slice> slices = new ArrayList<>();
        int last = reached(quantity, billedKw);
        for (int b = 0; b <= last; b++) {
            Optional<PriceBlock> next = b + 1 < blocks.size() ? Optional.of(blocks.get(b + 1)) : Optional.empty();
            double end = b < last ? blocks.get(b + 1).start(billedKw) : quantity;
            slices.add(new Slice(blocks.get(b), next, end - blocks.get(b).start(billedKw)));
        }
        return slices;
    }

    /** Place of the block in which a quantity ends at a billed demand. */
    int reached(double quantity, double billedKw) {
        int last = 0;
        while (last + 1 < blocks.size() && quantity > blocks.get(last + 1).start(billedKw)) {
            last++;
        }
        return last;
    }

    /** What one more kW of billed demand adds to a charge that ends in a block by moving its blocks, money/kW. */
    double moneyPerKw(int block) {
        double money = 0;
        for (int b = 1; b <= block; b++) {
            money += blocks.get(b).fromPerKw() * (blocks.get(b - 1).price() - blocks.get(b).price());
        }
        return money;
    }
}
