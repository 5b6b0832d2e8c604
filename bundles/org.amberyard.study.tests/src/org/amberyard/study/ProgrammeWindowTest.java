package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.amberyard.core.money.FiscalYears;
import org.amberyard.model.funding.FundingFactory;
import org.amberyard.model.funding.Programme;
import org.junit.jupiter.api.Test;

class ProgrammeWindowTest {
    /** The fiscal year 2027 starts on 1 July 2026. */
    private static final FiscalYears JULY = new FiscalYears(7, true);

    private static ProgrammeWindow window(int first, int last, String from, String by, FiscalYears fiscal) {
        Programme programme = FundingFactory.eINSTANCE.createProgramme();
        programme.setFirstYear(first);
        programme.setLastYear(last);
        programme.setFirstDate(from);
        programme.setLastDate(by);
        return ProgrammeWindow.of(programme, fiscal);
    }

    @Test
    void datesNarrowTheYearsByTheFirstDayOfEach() {
        assertEquals(new ProgrammeWindow(2026, 2030), window(2026, 2030, null, "", JULY));
        assertEquals(new ProgrammeWindow(2027, 2028), window(2020, 2040, "2026-07-01", "2027-07-01", JULY));
        assertEquals(new ProgrammeWindow(2028, 2027), window(2020, 2040, "2026-07-02", "2027-06-30", JULY));
        assertEquals(new ProgrammeWindow(2027, 2027), window(2020, 2040, "2026-07-01", "2027-06-30", FiscalYears.CALENDAR));
        assertEquals(new ProgrammeWindow(2027, 2027), window(2027, 2027, "2020-01-01", "2040-01-01", JULY));
    }

    @Test
    void aWindowHoldsItsFirstAndLastYear() {
        ProgrammeWindow window = window(2026, 2027, null, null, JULY);
        assertTrue(window.contains(2026) && window.contains(2027));
        assertFalse(window.contains(2025) || window.contains(2028));
    }
}
