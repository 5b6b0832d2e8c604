package org.amberyard.model.meta;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.amberyard.model.common.Month;
import org.amberyard.model.funding.FundingFactory;
import org.amberyard.model.funding.Programme;
import org.junit.jupiter.api.Test;

class ProgrammeYearsTest {
    private final Programme programme = FundingFactory.eINSTANCE.createProgramme();

    private ProgrammeYears years(int first, int last, String from, String by, Month start) {
        programme.setFirstYear(first);
        programme.setLastYear(last);
        programme.setFirstDate(from);
        programme.setLastDate(by);
        return ProgrammeYears.of(programme, start);
    }

    @Test
    void aFiscalYearBearsTheNumberOfTheYearInWhichItEnds() {
        assertEquals(LocalDate.of(2026, 7, 1), ProgrammeYears.firstDay(2027, Month.JULY));
        assertEquals(LocalDate.of(2027, 1, 1), ProgrammeYears.firstDay(2027, Month.JANUARY));
        assertEquals(LocalDate.of(2026, 10, 1), ProgrammeYears.firstDay(2027, Month.OCTOBER));
    }

    @Test
    void datesNarrowTheYearsByTheFirstDayOfEach() {
        assertEquals(new ProgrammeYears(2026, 2030), years(2026, 2030, null, "", Month.JULY));
        assertEquals(new ProgrammeYears(2027, 2028), years(2020, 2040, "2026-07-01", "2027-07-01", Month.JULY));
        assertEquals(new ProgrammeYears(2028, 2027), years(2020, 2040, "2026-07-02", "2027-06-30", Month.JULY));
        assertEquals(new ProgrammeYears(2027, 2027), years(2020, 2040, "2026-07-01", "2027-06-30", Month.JANUARY));
        assertEquals(new ProgrammeYears(2027, 2027), years(2027, 2027, "2020-01-01", "2040-01-01", Month.JULY));
    }

    @Test
    void aDateThatIsNoneIsLeftOut() {
        ProgrammeYears years = years(2026, 2027, "soon", null, Month.JULY);
        assertTrue(years.contain(2026) && years.contain(2027));
        assertFalse(years.contain(2025) || years.contain(2028));
    }
}
