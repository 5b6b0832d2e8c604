package org.amberyard.core.whatif;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.RealMatrix;

/** Says which pair keeps correlations from holding all together, and what it would have to be. */
final class ImpossibleCorrelation {
    private final List<String> names;
    private final int[] inputs;
    private final List<RankCorrelation> correlations;
    private final RealMatrix scores;

    /** What a pair would have to be with all others as they are. */
    private record Remedy(RankCorrelation pair, PairRange range) {
        /** How far it must move, on Fisher's scale, on which a step counts for more the stronger a correlation is. */
        double distance() {
            return Math.max(fisher(range.low()) - fisher(pair.target()), fisher(pair.target()) - fisher(range.high()));
        }

        private static double fisher(double correlation) {
            return Math.log((1 + correlation) / (1 - correlation)) / 2;
        }
    }

    ImpossibleCorrelation(List<String> names, int[] inputs, List<RankCorrelation> correlations, RealMatrix scores) {
        this.names = names;
        this.inputs = inputs;
        this.correlations = correlations;
        this.scores = scores;
    }

    /**
     * The pair that must move least by itself; where no pair can mend it alone, the one farthest from the nearest that
     * can.
     */
    String message() {
        return correlations.stream().map(this::remedy).flatMap(Optional::stream)
                .min(Comparator.comparingDouble(Remedy::distance)).map(this::ofOne).orElseGet(this::ofSeveral);
    }

    private Optional<Remedy> remedy(RankCorrelation pair) {
        return PairRange.of(scores, place(pair.first()), place(pair.second())).map(range -> new Remedy(pair, range));
    }

    private String ofOne(Remedy remedy) {
        return together() + ": with the others as they are, " + named(remedy.pair()) + " must be from "
                + text(remedy.range().low()) + " to " + text(remedy.range().high()) + " but is "
                + text(remedy.pair().target());
    }

    private String ofSeveral() {
        RealMatrix nearest = NearestCorrelation.of(scores);
        RankCorrelation farthest = correlations.stream()
                .max(Comparator.comparingDouble(c -> Math.abs(c.target() - possible(nearest, c)))).orElseThrow();
        return together() + ", and changing one of them is not enough: in the nearest that can, " + named(farthest)
                + " is "
                + text(possible(nearest, farthest)) + " instead of " + text(farthest.target());
    }

    private double possible(RealMatrix nearest, RankCorrelation pair) {
        return RankCorrelation.ofRanks(nearest.getEntry(place(pair.first()), place(pair.second())));
    }

    private String together() {
        return "Correlations between " + IntStream.of(inputs).mapToObj(names::get).collect(Collectors.joining(", "))
                + " cannot all hold";
    }

    private String named(RankCorrelation pair) {
        return "that of " + names.get(pair.first()) + " with " + names.get(pair.second());
    }

    private int place(int input) {
        return CorrelationMatrix.place(inputs, input);
    }

    private static String text(double correlation) {
        return String.format(Locale.ROOT, "%.2f", correlation);
    }
}
