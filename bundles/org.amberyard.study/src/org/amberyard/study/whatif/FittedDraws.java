package org.amberyard.study.whatif;

import java.util.stream.IntStream;
import org.amberyard.core.variants.FitErrors;
import org.amberyard.core.whatif.Draws;
import org.amberyard.core.whatif.KeptDraws;
import org.amberyard.core.whatif.QuadraticSurface;

/**
 * Stands in for whole evaluations by surfaces fitted to some of them, drawn from the distributions of the inputs. Safe for use
 * from several threads.
 */
final class FittedDraws {
    /** Evaluations for each coefficient of a surface. */
    private static final int PER_TERM = 3;

    private final QuadraticSurface surface;
    private final int columns;

    private FittedDraws(QuadraticSurface surface, int columns) {
        this.surface = surface;
        this.columns = columns;
    }

    /** True where inputs are numbers and many draws are to be read off. */
    static boolean wanted(StudyWhatIf whatIf) {
        int inputs = whatIf.names().size();
        boolean numbers = true;
        for (int input = 0; input < inputs; input++) {
            numbers &= !whatIf.uncertain().ofWords(input);
        }
        return whatIf.study().getWhatIf().isFitted() && numbers && !whatIf.byPrices()
                && whatIf.study().getWhatIf().getDraws() > count(inputs);
    }

    private static int count(int inputs) {
        return PER_TERM * QuadraticSurface.terms(inputs);
    }

    /** The evaluations to fit to. */
    static Evaluations evaluations(StudyWhatIf whatIf) {
        int count = count(whatIf.names().size());
        Draws draws = whatIf.uncertain().fitted(count);
        return new Evaluations(count, draws::at);
    }

    /** Fits to evaluations that are done. */
    static FittedDraws of(StudyWhatIf whatIf, KeptDraws kept) {
        Evaluations evaluations = evaluations(whatIf);
        double[][] inputs = new double[evaluations.count()][];
        for (int i = 0; i < inputs.length; i++) {
            inputs[i] = evaluations.values().apply(i);
        }
        return new FittedDraws(QuadraticSurface.of(inputs, kept.columns()), kept.columns().length);
    }

    /** Writes results; inputs that are not a number stand at the values that leave the study as it is. */
    void at(double[] values, double[] unchanged, double[] results) {
        double[] inputs = values.clone();
        for (int i = 0; i < inputs.length; i++) {
            inputs[i] = Double.isNaN(inputs[i]) ? unchanged[i] : inputs[i];
        }
        surface.at(inputs, results);
        results[columns - 1] = 0;
    }

    /** By how much results are missed. */
    FitErrors errors(OutcomeColumns of, int baseline) {
        return new FitErrors(IntStream.range(0, of.plans()).mapToObj(p -> surface.error(of.presentCost(p))).toList(),
                IntStream.range(0, of.plans()).mapToObj(p -> surface.error(of.presentCost(baseline), of.presentCost(p))).toList(),
                IntStream.range(0, of.plans()).mapToObj(p -> IntStream.range(0, of.years())
                        .mapToObj(y -> surface.error(of.appropriation(p, y))).toList()).toList());
    }
}
