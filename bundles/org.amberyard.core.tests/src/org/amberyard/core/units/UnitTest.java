package org.amberyard.core.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {

    @Test
    void unitsAreFoundByTheirTokens() {
        assertEquals(Optional.of(Unit.KWH_PER_KM), Unit.ofToken("kWh/km"));
        assertEquals(Optional.empty(), Unit.ofToken("kWh/mi"));
        for (Unit unit : Unit.values()) {
            assertEquals(Optional.of(unit), Unit.ofToken(unit.token()));
        }
    }

    @ParameterizedTest
    @CsvSource({"money/km,USD/mi,USD/km", "km/L,mpg,km/L", "degC,°F,°C", "share,%,%", "money,USD,USD"})
    void symbolsAreThoseOfTheSystemAndTheCurrency(String token, String us, String metric) {
        Unit unit = Unit.ofToken(token).orElseThrow();
        assertEquals(us, unit.symbol(UnitSystem.US, "USD"));
        assertEquals(metric, unit.symbol(UnitSystem.METRIC, "USD"));
    }

    @Test
    void pricesAndAmountsAreMoney() {
        assertTrue(Unit.MONEY.isMoney() && Unit.MONEY_PER_KW_MONTH.isMoney());
        assertFalse(Unit.KILOWATT.isMoney() || Unit.MONTH.isMoney());
        assertEquals(10, Arrays.stream(Unit.values()).filter(Unit::isMoney).collect(Collectors.toSet()).size());
    }

    /** A figure that is shown and stored again is the same but for rounding: nothing drifts by being looked at. */
    @ParameterizedTest
    @EnumSource(Unit.class)
    void whatIsShownIsStoredAgain(Unit unit) {
        for (UnitSystem system : UnitSystem.values()) {
            for (double stored : new double[] {-273.15, -1, 0, 0.37, 4000}) {
                assertEquals(stored, unit.store(unit.show(stored, system), system), Math.max(1e-12, Math.abs(stored) * 1e-14));
            }
        }
    }

    /** A mile a gallon is 100 x 3.785411784 / 1.609344 = 235.2146 litres for 100 km, so 6 miles a gallon are 39.2 litres. */
    @Test
    void fuelUseAndItsInverseAgree() {
        assertEquals(6, Unit.KM_PER_LITRE.show(100 / (235.214583 / 6), UnitSystem.US), 1e-7);
        assertEquals(1 / 6.0, Unit.LITRE_PER_KM.show(235.214583 / 6 / 100, UnitSystem.US), 1e-9);
    }
}
