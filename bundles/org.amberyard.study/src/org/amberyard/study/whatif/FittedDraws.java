package org.amberyard.study.whatif;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.variants.FitCheck;
import org.amberyard.core.whatif.KeptDraws;
import org.amberyard.core.whatif.QuadraticSurface;

/**
 * Stands in for whole evaluations: what prices do by themselves is found from sums at their prices, all else read off surfaces
 * fitted to some evaluations, drawn from the distributions of the inputs. How far that misses is found on others, drawn
 * independently and kept out of the fit. Safe for use from several threads.
 */
final class FittedDraws {
    private final Optional<PricedDraws> prices;
    private final OutcomeColumns columns;
    private final QuadraticSurface surface;
    private final FitCheck check;

    private FittedDraws(StudyWhatIf whatIf, double[][] inputs, double[][] results, FitSteps steps, int step) {
        this.prices = whatIf.outcomes().besideSurfaces();
        this.columns = whatIf.outcomes().columns();
        int fittedTo = steps.fittedTo(step);
        Exact exact = new Exact();
        double[][] left = left(inputs, results, exact);
        this.surface = QuadraticSurface.of(Arrays.copyOf(inputs, fittedTo), part(left, 0, fittedTo), steps.shape(step));
        HeldOut heldOut = HeldOut.of(surface, Arrays.copyOfRange(inputs, fittedTo, inputs.length), part(results, fittedTo, inputs.length),
                part(left, fittedTo, inputs.length));
        this.check = heldOut.check(columns, whatIf.base().input().baseline(), fittedTo, whatIf.study().getWhatIf().getFitErrorAllowed());
    }

    /** True where inputs are numbers and many draws are to be read off. */
    static boolean wanted(StudyWhatIf whatIf) {
        boolean numbers = IntStream.range(0, whatIf.names().size()).noneMatch(whatIf.uncertain()::ofWords);
        return whatIf.study().getWhatIf().isFitted() && numbers && !whatIf.byPrices() && FitSteps.of(whatIf).last() >= 0;
    }

    /** Fits to evaluations up to a step that are done, and checks the fit on those that are kept out. */
    static FittedDraws of(StudyWhatIf whatIf, KeptDraws kept, int step) {
        FitSteps steps = FitSteps.of(whatIf);
        Evaluations evaluations = steps.evaluations(step);
        double[][] inputs = IntStream.range(0, evaluations.count()).mapToObj(evaluations.values()).toArray(double[][]::new);
        return new FittedDraws(whatIf, inputs, part(kept.columns(), 0, inputs.length), steps, step);
    }

    private static double[][] part(double[][] columns, int from, int to) {
        return Arrays.stream(columns).map(column -> Arrays.copyOfRange(column, from, to)).toArray(double[][]::new);
    }

    /** What prices by themselves leave of results, by column and evaluation. */
    private static double[][] left(double[][] inputs, double[][] results, Exact exact) {
        double[][] left = new double[results.length][inputs.length];
        for (int evaluation = 0; evaluation < inputs.length; evaluation++) {
            double[] known = exact.at(inputs[evaluation]);
            for (int column = 0; column < left.length; column++) {
                left[column][evaluation] = results[column][evaluation] - known[column];
            }
        }
        return left;
    }

    /** What prices do by themselves, as if they decided nothing otherwise; the surface holds what that misses. For one thread. */
    private final class Exact {
        private final Optional<PricedDraws.Evaluation> evaluation = prices.map(p -> p.evaluation(columns));
        private final double[] results = new double[columns.count()];

        double[] at(double[] inputs) {
            evaluation.ifPresent(e -> e.asDecided(inputs, results));
            return results;
        }
    }

    /** Reads draws off; for one thread. */
    Reading reading() {
        return new Reading();
    }

    /** With memory of its own, for one thread. */
    final class Reading {
        private final Exact exact = new Exact();

        /** Writes results; inputs that are not a number stand at the values that leave the study as it is. */
        void at(double[] values, double[] unchanged, double[] results) {
            double[] inputs = values.clone();
            for (int i = 0; i < inputs.length; i++) {
                inputs[i] = Double.isNaN(inputs[i]) ? unchanged[i] : inputs[i];
            }
            surface.at(inputs, results);
            double[] known = exact.at(values);
            for (int column = 0; column < results.length; column++) {
                results[column] += known[column];
            }
            results[columns.wholly()] = 0;
        }
    }

    /** By how much results are missed, and whether that is good enough. */
    FitCheck check() {
        return check;
    }
}
