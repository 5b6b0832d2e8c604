package org.amberyard.core.whatif;

import java.util.List;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import org.amberyard.core.math.Checks;

/**
 * Several samples of the same kind with seeds of their own, draws taken from them in turn. Within a sample of a Latin
 * hypercube or a Sobol sequence draws are not independent, so that their scatter does not tell the error of a mean; the
 * scatter of the means of independent samples does.
 */
public final class ReplicatedPoints implements UnitPoints {
    private final List<UnitPoints> samples;

    private ReplicatedPoints(List<UnitPoints> samples) {
        this.samples = samples;
    }

    /**
     * Samples of a seed.
     *
     * @param seed any number
     * @param replicates number of samples, 1 or more; 8 to 32 give a usable error
     * @param sample a sample of a seed; all have as many dimensions
     */
    public static ReplicatedPoints of(long seed, int replicates, LongFunction<UnitPoints> sample) {
        CounterRandom seeds = new CounterRandom(seed, RandomUse.REPLICATE);
        return new ReplicatedPoints(IntStream.range(0, Checks.atLeast("Number of replicates", replicates, 1))
                .mapToObj(r -> sample.apply(seeds.bits(r, 0))).toList());
    }

    /** Number of samples; draw i belongs to the sample i modulo this. */
    public int replicates() {
        return samples.size();
    }

    @Override
    public int dimensions() {
        return samples.get(0).dimensions();
    }

    @Override
    public double at(int draw, int dimension) {
        return samples.get(draw % samples.size()).at(draw / samples.size(), dimension);
    }
}
