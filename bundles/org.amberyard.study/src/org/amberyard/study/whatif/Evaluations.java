package org.amberyard.study.whatif;

import java.util.function.IntFunction;

/**
 * Variants to evaluate.
 *
 * @param count how many
 * @param values values of the uncertain inputs in each; not a number leaves an input as it is
 */
record Evaluations(int count, IntFunction<double[]> values) {
}
