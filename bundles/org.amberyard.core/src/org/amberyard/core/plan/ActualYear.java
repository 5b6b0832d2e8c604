package org.amberyard.core.plan;

/**
 * What came of a year that is over, and what a plan foresaw for it where the study does not foresee it any more.
 *
 * @param year year, counted from the base year; negative before it
 * @param came what came of it
 * @param foreseenBy name of the plan that foresaw it; empty when nobody has kept that
 * @param foreseen what that plan foresaw
 */
public record ActualYear(int year, YearFigures came, String foreseenBy, YearFigures foreseen) {

    /** A year of which nobody has kept what was foreseen. */
    public ActualYear(int year, YearFigures came) {
        this(year, came, "", YearFigures.UNKNOWN);
    }

    /** True for a year before the study of which is kept what was foreseen. */
    public boolean isKept() {
        return year < 0 && !foreseen.equals(YearFigures.UNKNOWN);
    }
}
