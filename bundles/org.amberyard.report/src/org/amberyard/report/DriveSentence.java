package org.amberyard.report;

import java.util.Locale;
import org.amberyard.charts.Figures;
import org.amberyard.core.trace.DriveStatistics;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/** Says what is usually told of a drive. */
public final class DriveSentence {
    private DriveSentence() {
    }

    /** The sentence, in the units of the user. */
    public static String of(DriveStatistics drive, UnitSystem system) {
        return String.format(Locale.ROOT, "The drive is %s long and takes %.1f min: mean %s, highest %s, %s of the time idle, "
                + "%s, climb %s, mean acceleration %s.",
                shown("%.2f", Unit.KILOMETRE, drive.lengthM() / 1000, system), drive.durationS() / 60,
                shown("%.1f", Unit.KM_PER_HOUR, drive.meanSpeedMps() * 3.6, system),
                shown("%.1f", Unit.KM_PER_HOUR, drive.maxSpeedMps() * 3.6, system), Figures.percent(drive.idleShare()),
                drive.stops() == 1 ? "1 stop" : drive.stops() + " stops",
                shown("%,.0f", Unit.METRE, drive.climbM(), system),
                shown("%.2f", Unit.METRE_PER_SECOND_SQUARED, drive.meanAccelerationMps2(), system));
    }

    private static String shown(String format, Unit unit, double stored, UnitSystem system) {
        return String.format(Locale.ROOT, format, unit.show(stored, system)) + " " + unit.symbol(system, "");
    }
}
