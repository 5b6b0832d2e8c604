package org.amberyard.study.begin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.common.BodyType;
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
        assertEquals(List.of(), StudyFindings.of(BeginStudy.of(sheet.answers("Ashcombe", BodyType.C))).stream()
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
        Answers answers = sheet.answers("Ashcombe", BodyType.D);
        assertEquals(UnitChoice.METRIC, answers.units());
        assertEquals(60 * 1.609344, answers.day().km(), 1e-12);
        assertEquals(-30, answers.weather().coldestC(), 1e-12);
    }

    @Test
    void whatIsNotAllowedLeavesTheAnswerAsItWas() {
        for (String typed : new String[] {"", "many", "0", "-3", "2.5", "3000"}) {
            assertFalse(sheet.read(Asked.ON_ROUTES, typed), typed);
        }
        assertEquals("12", sheet.text(Asked.ON_ROUTES));
        assertEquals("1", sheet.lowestText(Asked.ON_ROUTES));
        assertEquals("2,000", sheet.highestText(Asked.ON_ROUTES));
    }

    @Test
    void signsOfMoneyAndUnitsMayStandBesideANumber() {
        assertTrue(sheet.read(Asked.ENGINE_BUS, "$170,000"));
        assertEquals("170,000", sheet.text(Asked.ENGINE_BUS));
        assertTrue(sheet.read(Asked.ENERGY, "USD 0.14"));
        assertEquals("0.14", sheet.text(Asked.ENERGY));
        assertTrue(sheet.read(Asked.ON_ROUTES, "14 buses"));
        assertEquals("14", sheet.text(Asked.ON_ROUTES));
        assertTrue(sheet.read(Asked.COLDEST, "-10 °F"));
        assertEquals("-10", sheet.text(Asked.COLDEST));
        assertTrue(sheet.read(Asked.DAY_KM, "90 km"));
        assertEquals("55.92", sheet.text(Asked.DAY_KM));
        assertFalse(sheet.read(Asked.SPARES, "2 of 3"));
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
