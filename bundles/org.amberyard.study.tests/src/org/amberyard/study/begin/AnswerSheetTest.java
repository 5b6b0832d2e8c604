package org.amberyard.study.begin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.study.StudyFindings;
import org.junit.jupiter.api.Test;

/** Answers as they are typed. */
class AnswerSheetTest {
    private final AnswerSheet sheet = new AnswerSheet(UnitSystem.US, Locale.US);

    @Test
    void whatIsUsualIsAllowedAndGivesAStudyWithoutErrors() {
        for (Asked asked : Asked.values()) {
            assertTrue(sheet.read(asked, sheet.text(asked)), asked.name());
        }
        assertEquals(List.of(), StudyFindings.of(BeginStudy.of(sheet.answers("Ashcombe"))).stream()
                .filter(f -> f.severity() == Severity.ERROR).map(Finding::message).toList());
    }

    @Test
    void answersAreReadInTheUnitsThatAreShown() {
        assertEquals("60", sheet.text(Asked.DAY_KM));
        assertEquals("3.75", sheet.text(Asked.DIESEL));
        assertEquals("-4", sheet.text(Asked.COLDEST));
        assertTrue(sheet.read(Asked.COLDEST, "-22"));
        sheet.use(UnitSystem.METRIC);
        assertEquals("-30", sheet.text(Asked.COLDEST));
        assertEquals("96.6", sheet.text(Asked.DAY_KM), "what is usual is read at a glance");
        assertTrue(sheet.read(Asked.DAY_KM, "96.6"), "which keeps all its digits");
        Answers answers = sheet.answers("Ashcombe");
        assertEquals(UnitChoice.METRIC, answers.units());
        assertEquals(60 * 1.609344, answers.day().km(), 1e-12);
        assertEquals(-30, answers.weather().coldestC(), 1e-12);
    }

    @Test
    void whatIsNotAllowedLeavesTheAnswerAsItWas() {
        for (String typed : new String[] {"", "many", "0", "-3", "2.5", "3000"}) {
            assertFalse(sheet.read(Asked.ROUTES_C, typed), typed);
        }
        assertEquals("12", sheet.text(Asked.ROUTES_C));
        assertEquals("1", sheet.lowestText(Asked.ROUTES_C));
        assertEquals("2,000", sheet.highestText(Asked.ROUTES_C));
    }

    @Test
    void aFleetMayHaveSeveralBodyTypesAndNeedsABusOnARoute() {
        assertFalse(sheet.read(Asked.ROUTES_C, "0"), "no bus would be left");
        assertTrue(sheet.read(Asked.ROUTES_A, "4"));
        assertTrue(sheet.read(Asked.ROUTES_C, "0"));
        assertTrue(sheet.read(Asked.SPARES_D, "1"));
        assertFalse(sheet.matters(Asked.ENGINE_B));
        assertTrue(sheet.matters(Asked.ENGINE_A) && sheet.matters(Asked.ELECTRIC_D) && sheet.matters(Asked.DIESEL));
        assertEquals(List.of("A 4 0", "C 0 2", "D 0 1"), sheet.answers("Ashcombe").fleet().bodies().stream()
                .map(b -> b.type() + " " + b.onRoutes() + " " + b.spares()).toList());
    }

    @Test
    void signsOfMoneyAndUnitsMayStandBesideANumber() {
        assertTrue(sheet.read(Asked.ENGINE_C, "$170,000"));
        assertEquals("170,000", sheet.text(Asked.ENGINE_C));
        assertTrue(sheet.read(Asked.ENERGY, "USD 0.14"));
        assertEquals("0.14", sheet.text(Asked.ENERGY));
        assertTrue(sheet.read(Asked.ROUTES_C, "14 buses"));
        assertEquals("14", sheet.text(Asked.ROUTES_C));
        assertTrue(sheet.read(Asked.COLDEST, "-10 °F"));
        assertEquals("-10", sheet.text(Asked.COLDEST));
        assertTrue(sheet.read(Asked.DAY_KM, "90 km"));
        assertEquals("55.92", sheet.text(Asked.DAY_KM));
        assertFalse(sheet.read(Asked.SPARES_C, "2 of 3"));
    }

    @Test
    void answersMustFitEachOther() {
        assertTrue(sheet.read(Asked.BASE_YEAR, "2024"));
        assertFalse(sheet.read(Asked.NEWEST_YEAR, "2025"), "no bus enters service after the first year");
        assertEquals("2024", sheet.highestText(Asked.NEWEST_YEAR));
        assertFalse(sheet.read(Asked.ELECTRIC_BY, "2024"));
        assertEquals("2025", sheet.lowestText(Asked.ELECTRIC_BY));
        assertTrue(sheet.read(Asked.JANUARY_LOW, "-10"));
        assertFalse(sheet.read(Asked.COLDEST, "-4"), "the coldest day is no warmer than the mean low");
    }
}
