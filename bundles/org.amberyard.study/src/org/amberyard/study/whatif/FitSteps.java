package org.amberyard.study.whatif;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.whatif.Draws;
import org.amberyard.core.whatif.SurfaceShape;

/**
 * The evaluations to which surfaces are fitted and on which they are checked. Where a fit is not good enough, those that were kept
 * out of it are fitted to as well, so that surfaces may have more terms, and others are kept out. Where prices are exact beside the
 * surfaces, what is left of the draws is nearly straight, so that few evaluations are fitted to at first.
 */
final class FitSteps {
    /** Evaluations for each coefficient of a surface. */
    private static final int PER_TERM = 3;
    private static final int LEAST_FITTED = 24;
    /** Steps that are taken at most beyond those after which surfaces have all terms. */
    private static final int MORE_STEPS = 2;

    private final UncertainInputs inputs;
    private final List<Boolean> prices;
    private final int draws;
    private final int first;

    /**
     * @param prices by input: true where it is exact beside the surfaces
     * @param draws that are to be read off; no step takes as many evaluations, since each draw can be evaluated then
     */
    FitSteps(UncertainInputs inputs, List<Boolean> prices, int draws) {
        this.inputs = inputs;
        this.prices = List.copyOf(prices);
        this.draws = draws;
        this.first = prices.contains(true) ? Math.max(LEAST_FITTED, PER_TERM * shape(SurfaceShape.Degree.STRAIGHT).terms())
                : PER_TERM * SurfaceShape.quadratic(prices.size()).terms();
    }

    /** Of a study that asks for fitted draws. */
    static FitSteps of(StudyWhatIf whatIf) {
        VariantOutcomes outcomes = whatIf.outcomes();
        return new FitSteps(whatIf.uncertain(), outcomes.besideSurfaces().map(p -> outcomes.prices())
                .orElse(Collections.nCopies(whatIf.names().size(), false)), whatIf.study().getWhatIf().getDraws());
    }

    private SurfaceShape shape(SurfaceShape.Degree degree) {
        return new SurfaceShape(prices, degree);
    }

    /** Evaluations that are fitted to at a step, from 0. */
    int fittedTo(int step) {
        return first + step * inputs.heldOut();
    }

    /** Evaluations up to a step in all: those that are fitted to, then those that are kept out. */
    int upTo(int step) {
        return fittedTo(step + 1);
    }

    /** The last step, below 0 where there is none. */
    int last() {
        int whole = 0;
        while (fittedTo(whole) < PER_TERM * shape(SurfaceShape.Degree.ALL).terms()) {
            whole++;
        }
        int last = whole + MORE_STEPS;
        while (last >= 0 && upTo(last) >= draws) {
            last--;
        }
        return last;
    }

    /** The terms of surfaces at a step: as many as the evaluations tell. */
    SurfaceShape shape(int step) {
        return Stream.of(SurfaceShape.Degree.ALL, SurfaceShape.Degree.OWN).map(this::shape)
                .filter(shape -> PER_TERM * shape.terms() <= fittedTo(step)).findFirst().orElse(shape(SurfaceShape.Degree.STRAIGHT));
    }

    /** The evaluations up to a step. */
    Evaluations evaluations(int step) {
        Draws fitted = inputs.fitted(first);
        List<Draws> keptOut = Stream.iterate(0, s -> s <= step, s -> s + 1).map(inputs::keptOut).toList();
        return new Evaluations(upTo(step), e -> e < first ? fitted.at(e)
                : keptOut.get((e - first) / inputs.heldOut()).at((e - first) % inputs.heldOut()));
    }
}
