package org.amberyard.study.whatif;

import java.util.Arrays;
import org.amberyard.core.variants.FitCheck;
import org.amberyard.core.whatif.Draws;
import org.amberyard.core.whatif.KeptDraws;
import org.amberyard.core.whatif.QuadraticSurface;

/**
 * Stands in for whole evaluations by surfaces fitted to some of them, drawn from the distributions of the inputs. How far it misses
 * is found on others, drawn independently and kept out of the fit. Safe for use from several threads.
 */
final class FittedDraws {
    /** Evaluations for each coefficient of a surface. */
    private static final int PER_TERM = 3;

    private final QuadraticSurface surface;
    private final int columns;
    private final FitCheck check;

    private FittedDraws(QuadraticSurface surface, int columns, FitCheck check) {
        this.surface = surface;
        this.columns = columns;
        this.check = check;
    }

    /** True where inputs are numbers and many draws are to be read off. */
    static boolean wanted(StudyWhatIf whatIf) {
        int inputs = whatIf.names().size();
        boolean numbers = true;
        for (int input = 0; input < inputs; input++) {
            numbers &= !whatIf.uncertain().ofWords(input);
        }
        return whatIf.study().getWhatIf().isFitted() && numbers && !whatIf.byPrices()
                && whatIf.study().getWhatIf().getDraws() > fittedTo(inputs) + whatIf.uncertain().heldOut();
    }

    private static int fittedTo(int inputs) {
        return PER_TERM * QuadraticSurface.terms(inputs);
    }

    /** The evaluations to fit to, then those that are kept out. */
    static Evaluations evaluations(StudyWhatIf whatIf) {
        int fittedTo = fittedTo(whatIf.names().size());
        Draws draws = whatIf.uncertain().fitted(fittedTo);
        Draws others = whatIf.uncertain().keptOut();
        return new Evaluations(fittedTo + whatIf.uncertain().heldOut(), e -> e < fittedTo ? draws.at(e) : others.at(e - fittedTo));
    }

    /** Fits to evaluations that are done, and checks the fit on the others. */
    static FittedDraws of(StudyWhatIf whatIf, KeptDraws kept) {
        Evaluations evaluations = evaluations(whatIf);
        int fittedTo = fittedTo(whatIf.names().size());
        double[][] inputs = new double[evaluations.count()][];
        for (int i = 0; i < inputs.length; i++) {
            inputs[i] = evaluations.values().apply(i);
        }
        QuadraticSurface surface = QuadraticSurface.of(Arrays.copyOf(inputs, fittedTo), results(kept, 0, fittedTo));
        HeldOut heldOut = HeldOut.of(surface, Arrays.copyOfRange(inputs, fittedTo, inputs.length), results(kept, fittedTo, inputs.length));
        return new FittedDraws(surface, kept.columns().length, heldOut.check(whatIf.outcomes().columns(),
                whatIf.base().input().baseline(), whatIf.study().getWhatIf().getFitErrorAllowed()));
    }

    private static double[][] results(KeptDraws kept, int from, int to) {
        return Arrays.stream(kept.columns()).map(column -> Arrays.copyOfRange(column, from, to)).toArray(double[][]::new);
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

    /** By how much results are missed, and whether that is good enough. */
    FitCheck check() {
        return check;
    }
}
