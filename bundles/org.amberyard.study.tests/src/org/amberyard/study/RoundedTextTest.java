package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.site.SitePackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.junit.jupiter.api.Test;

class RoundedTextTest {
    private final Study study = StudyDefaults.create();
    private final RoundedText figures = new RoundedText(study);

    /** A converted figure has a handful of digits, a large one all of its whole part, and what is no number is as it is. */
    @Test
    void figuresAreShownAtALengthForReading() {
        assertEquals("18.6 mi", figures.shown(Literals.BUS__OTHER_KM_PER_YEAR, 29.93379839999997).replace("/yr", ""));
        assertEquals("123,457 mi", figures.shown(Literals.BUS__ODOMETER_KM, 123_456.7891234 * 1.609344));
        assertEquals("0.00028889 mpg", figures.shown(Literals.BUS__MEASURED_KM_PER_L, 0.000288888889 * 1.609344 / 3.785411784));
        assertEquals("0 mi", figures.shown(Literals.BUS__ODOMETER_KM, 0.0));
        assertEquals("2027", figures.shown(Literals.BUS__PLANNED_RETIREMENT_YEAR, 2027));
        assertEquals("", figures.shown(Literals.BUS__ROUTE, null));
    }

    /** A default of 200 m is a round figure, not one of 656.17 ft; those of the same unit everywhere have all their digits. */
    @Test
    void defaultsAreRoundInOtherUnitsToo() {
        assertEquals(656, Unit.METRE.show(figures.readableDefault(SitePackage.Literals.SITE__ELEVATION_M, 200), UnitSystem.US), 1e-9);
        assertEquals(1234, Unit.METRE.show(figures.readableDefault(SitePackage.Literals.SITE__ELEVATION_M, 376.2), UnitSystem.US), 1e-9,
                "whole parts are never rounded away");
        assertEquals(0.02125, figures.readableDefault(StudyPackage.Literals.SETTINGS__GENERAL_INFLATION, 0.02125), 1e-12);
    }

    /** What is written for files is read as the same value, with no more digits than that takes. */
    @Test
    void filesHaveAsManyDigitsAsAreNeeded() throws FieldFormatException {
        FieldFormat miles = FieldFormat.of(Literals.BUS__ODOMETER_KM, UnitSystem.US, "USD", Locale.ROOT);
        assertEquals("18.6", miles.exactText(miles.parse("18.6")));
        assertEquals("", miles.exactText(null));
    }

    /** Of some stored figures no double in the other unit is read as just them, as of a temperature near the freezing point. */
    @Test
    void everyValueComesBackBitForBit() throws FieldFormatException {
        List<FieldFormat> formats = Stream.of(Literals.BUS__ODOMETER_KM, Literals.BUS__MEASURED_KM_PER_L, Literals.CONSUMPTION_LOG__OUTSIDE_C)
                .map(f -> FieldFormat.of(f, UnitSystem.US, "USD", Locale.ROOT)).toList();
        SplittableRandom random = new SplittableRandom(17);
        for (int i = 0; i < 3000; i++) {
            double value = random.nextDouble(-1, 1) * Math.pow(10, random.nextInt(-6, 7));
            for (FieldFormat format : formats) {
                assertEquals(value, format.parse(format.exactText(value)), format.exactText(value));
            }
        }
    }
}
