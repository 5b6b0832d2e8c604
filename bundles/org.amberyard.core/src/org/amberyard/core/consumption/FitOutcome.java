package org.amberyard.core.consumption;

/** What came of fitting a curve to logs: the fit, or why there is none. */
public sealed interface FitOutcome permits CurveFit, FitRefusal {
}
