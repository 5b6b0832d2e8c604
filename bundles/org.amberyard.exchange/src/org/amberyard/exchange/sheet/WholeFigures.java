package org.amberyard.exchange.sheet;

import java.util.Locale;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyUnits;

/** Whole figures in the units of a study, for messages. */
final class WholeFigures {
    private WholeFigures() {
    }

    /** A distance, km. */
    static String distance(double km, Study study) {
        return of(km, Unit.KILOMETRE, study);
    }

    /** A figure of a unit as the model stores it. */
    static String of(double stored, Unit unit, Study study) {
        UnitSystem system = StudyUnits.of(study);
        return String.format(Locale.ROOT, "%,.0f %s", unit.show(stored, system), unit.symbol(system, StudyUnits.currency(study)));
    }
}
