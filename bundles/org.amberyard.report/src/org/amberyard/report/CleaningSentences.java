package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.charts.Figures;
import org.amberyard.core.trace.CleaningReport;
import org.amberyard.core.trace.GapTotal;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/** Says what the cleaning of a track did, a sentence for each thing that was done. */
public final class CleaningSentences {
    private final CleaningReport report;
    private final UnitSystem system;

    private CleaningSentences(CleaningReport report, UnitSystem system) {
        this.report = report;
        this.system = system;
    }

    /** The sentences, in the order of the work; lengths in the units of the user. */
    public static List<String> of(CleaningReport report, UnitSystem system) {
        CleaningSentences words = new CleaningSentences(report, system);
        List<String> sentences = new ArrayList<>();
        sentences.add(counted(report.pointsRead(), "point was", "points were") + " read.");
        words.addPoints(sentences);
        words.addGaps(sentences);
        words.addSpeeds(sentences);
        words.addEnds(sentences);
        words.addClimb(sentences);
        return List.copyOf(sentences);
    }

    private void addPoints(List<String> sentences) {
        if (report.sameTime() > 0) {
            sentences.add(counted(report.sameTime(), "point bears", "points bear")
                    + " the time of the one before and " + wereLeftOut(report.sameTime()) + ".");
        }
        if (report.outliers() > 0) {
            sentences.add(counted(report.outliers(), "point", "points") + " that no bus can have reached "
                    + wereLeftOut(report.outliers()) + ".");
        }
    }

    private static String wereLeftOut(int count) {
        return count == 1 ? "was left out" : "were left out";
    }

    private void addGaps(List<String> sentences) {
        addGaps(sentences, report.gaps().interpolated(), "of up to 10 s", "interpolated");
        addGaps(sentences, report.gaps().standing(), "in which the bus hardly moved", "taken as standing time");
        addGaps(sentences, report.gaps().bridged(), "in which the bus moved",
                "bridged over " + distance(report.gaps().bridgedM()) + " at the mean speed");
    }

    private static void addGaps(List<String> sentences, GapTotal gaps, String kind, String done) {
        if (gaps.count() > 0) {
            sentences.add(counted(gaps.count(), "gap", "gaps") + " " + kind + ", " + Figures.whole(gaps.seconds())
                    + " s in all, " + (gaps.count() == 1 ? "was " : "were ") + done + ".");
        }
    }

    private void addSpeeds(List<String> sentences) {
        if (report.smoothedOverS() > 0) {
            String over = String.format(Locale.ROOT, "%.0f s to either side.", report.smoothedOverS());
            sentences.add(report.positionScatterM() > 0
                    ? "Positions scatter by about " + length(report.positionScatterM(), "%.1f %s")
                            + "; speeds are the slopes of curves fitted over " + over
                    : "Speeds scatter and were smoothed by curves fitted over " + over);
        }
        sentences.add("The distance is " + distance(report.cleanDistanceM()) + "; from point to point it was "
                + distance(report.rawDistanceM()) + ".");
    }

    private void addEnds(List<String> sentences) {
        if (report.startRampS() > 0) {
            sentences.add("The track does not start at rest; a start of " + report.startRampS() + " s was added.");
        }
        if (report.endRampS() > 0) {
            sentences.add("The track does not end at rest; a stop of " + report.endRampS() + " s was added.");
        }
    }

    private void addClimb(List<String> sentences) {
        if (report.rawClimbM().isEmpty()) {
            sentences.add("The track has no elevations, so the drive is level.");
            return;
        }
        sentences.add("The climb is " + length(report.cleanClimbM(), "%,.0f %s") + "; with all noise it was "
                + length(report.rawClimbM().getAsDouble(), "%,.0f %s") + ".");
        if (report.clippedSteps() > 0) {
            sentences.add("For " + report.clippedSteps() + " s the grade was beyond 25 % and was cut to that.");
        }
    }

    private static String counted(int count, String one, String many) {
        return Figures.whole(count) + " " + (count == 1 ? one : many);
    }

    private String distance(double metres) {
        return String.format(Locale.ROOT, "%.2f %s", Unit.KILOMETRE.show(metres / 1000, system),
                Unit.KILOMETRE.symbol(system, ""));
    }

    private String length(double metres, String format) {
        return String.format(Locale.ROOT, format, Unit.METRE.show(metres, system), Unit.METRE.symbol(system, ""));
    }
}
