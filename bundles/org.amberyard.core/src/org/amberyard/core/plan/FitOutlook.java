package org.amberyard.core.plan;

import java.util.OptionalInt;

/**
 * How a fit comes out beyond its worst day: how often it fails under the study's charging habit, on which day it is tightest,
 * and how little charging between runs would do.
 *
 * @param fit the fit
 * @param failingWhenNew days of a year that fail with a new pack
 * @param failingWhenAged the same with an aged pack
 * @param worstAirC mean outside air of the worst day of an aged pack, °C
 * @param leastMiddayMin least charging between runs on a day with which an aged pack holds through every operated day, whole
 *            minutes; empty where it holds without, and where all that the stands at the yard allow is not enough
 */
public record FitOutlook(RouteFit fit, FailingDays failingWhenNew, FailingDays failingWhenAged, double worstAirC,
        OptionalInt leastMiddayMin) {
}
