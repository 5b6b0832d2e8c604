package org.amberyard.core.variants;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;

/**
 * What a what-if has found so far.
 *
 * @param base results of the study as it is
 * @param inputs the inputs that vary
 * @param single inputs one at a time
 * @param scenarios plans in the scenarios
 * @param fit whether draws are read off fitted surfaces; empty where the study does not ask for it or it is not known yet
 * @param all draws of all inputs together; fewer than wanted while they are being worked out or when they were stopped
 * @param prices prices that vary, over the years and the draws; empty while nothing is drawn
 * @param drawn what the fields of all uncertain inputs hold over the draws; empty while nothing is drawn
 * @param grid the two widest inputs together
 * @param shares what explains the variance
 * @param breakEvens where plans cost the same
 */
public record WhatIfResults(StudyResult base, VariedInputs inputs, Optional<OneAtATime> single, Optional<Scenarios> scenarios,
        Optional<FitCheck> fit, Optional<AllTogether> all, List<PriceFan> prices, List<DrawnInput> drawn, Optional<TwoTogether> grid,
        Optional<VarianceShares> shares, BreakEvens breakEvens) {

    public WhatIfResults {
        prices = List.copyOf(prices);
        drawn = List.copyOf(drawn);
    }

    /** Where plans cost as much as the baseline along an input. */
    public Optional<BreakEvenLine> breakEven() {
        return breakEvens.line();
    }
}
