package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.funding.FundingPackage;
import org.amberyard.model.routes.RoutesPackage;
import org.junit.jupiter.api.Test;

class DateTextTest {

    private static final LocalDate FOURTH_OF_SEPTEMBER = LocalDate.of(2025, 9, 4);

    @Test
    void theLocaleSaysWhatComesFirst() {
        for (String typed : List.of("9/4/25", " 9/4/2025 ", "09-04-25", "2025-09-04")) {
            assertEquals(Optional.of(FOURTH_OF_SEPTEMBER), DateText.date(typed, Locale.US), typed);
        }
        assertEquals(Optional.of(FOURTH_OF_SEPTEMBER), DateText.date("4.9.2025", Locale.GERMANY));
        assertEquals(Optional.of(FOURTH_OF_SEPTEMBER), DateText.date("4/9/25", Locale.UK));
    }

    @Test
    void aNumberAboveTwelveIsADay() {
        assertEquals(Optional.of(LocalDate.of(2025, 9, 14)), DateText.date("14/9/25", Locale.US));
        assertEquals(Optional.of(LocalDate.of(2025, 9, 14)), DateText.date("9/14/25", Locale.UK));
    }

    @Test
    void whatIsNoDateIsNone() {
        for (String typed : List.of("", "soon", "13/14/25", "2025-02-30", "9/4")) {
            assertEquals(Optional.empty(), DateText.date(typed, Locale.US), typed);
        }
    }

    @Test
    void fieldsOfDatesKeepThemAsTheModelDoes() throws FieldFormatException {
        assertTrue(DateText.isDate(RoutesPackage.Literals.TRIP__DATE));
        assertTrue(DateText.isDate(FundingPackage.Literals.PROGRAMME__LAST_DATE));
        assertFalse(DateText.isDate(RoutesPackage.Literals.TRIP__NAME));
        FieldFormat format = FieldFormat.of(RoutesPackage.Literals.TRIP__DATE, UnitSystem.US, "USD", Locale.US);
        assertEquals("2025-09-04", format.parse("9/4/25"));
        assertEquals("soon", format.parse("soon"));
    }
}
