package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.study.Study;
import org.amberyard.report.document.DataTable;
import org.junit.jupiter.api.Test;

class TimelineTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();

    private static DataTable timeline(Study study) {
        return GrantTable.T9.of(EXAMPLE.in(study, ExamplePapers.tables(GrantTable.T9))).get(0);
    }

    private static List<String> lines(DataTable of) {
        return of.rows().stream().map(r -> String.join(" | ", IntStream.range(0, 4).mapToObj(c -> of.printed(r, c)).toList())).toList();
    }

    private static void assertHas(DataTable table, String line) {
        assertTrue(lines(table).contains(line), line + " in " + lines(table));
    }

    @Test
    void deadlinesOfProgrammesAreDatesWithMonthsFromTheAward() {
        DataTable table = timeline(EXAMPLE.study());
        assertHas(table, "2026-03-16 | 0 | Award: “Clean Fleet Fund” | noted in the study");
        assertHas(table, "2026-04-01 | 0 | Order at the latest: B01-2; B02-2; B03-2; B15-2 | delivery time of its type");
        assertHas(table, "2027-04-01 | 12 | Scrapped at the latest: B01; B02; B03; B15 | 90 days after service of the new "
                + "bus");
        assertHas(table, "2028-03-31 | 24 | Scrapped at the latest: B04; B05; B16 | 90 days after service of the new "
                + "bus");
        assertHas(table, "2028-06-29 | 27 | Closed out at the latest: “Clean Fleet Fund” | 180 days after the last purchase that it "
                + "pays for");
        assertFalse(lines(table).toString().contains("To be scrapped from then on"), lines(table).toString());
        assertFalse(lines(table).contains(" | – | Award | "));
    }

    @Test
    void whatTheStudyDoesNotHoldIsLeftToTheApplicant() {
        Study study = EXAMPLE.study();
        Programme fund = study.getProgrammes().get(0);
        fund.setAwardDate(" ");
        fund.setScrapWithinDays(0);
        fund.setCloseOutDays(0);
        DataTable table = timeline(study);
        assertEquals("Months from the award", table.columns().get(1).label());
        assertTrue(table.columns().get(1).toFill());
        assertHas(table, " |  | Award | ");
        assertTrue(lines(table).toString().contains("To be scrapped from then on: B01; B02; B03; B15"), lines(table).toString());
        assertFalse(lines(table).toString().contains("Closed out"), lines(table).toString());
    }

    @Test
    void ordersBeforeTheAwardAreNamed() {
        Study study = EXAMPLE.study();
        assertFalse(timeline(study).notes().toString().contains("To be ordered before"));
        study.getProgrammes().get(0).setAwardDate("2026-05-02");
        DataTable late = timeline(study);
        assertHas(late, "2026-04-01 | −2 | Order at the latest: B01-2; B02-2; B03-2; B15-2 | delivery time of its type");
        assertTrue(late.notes().toString().contains("To be ordered before the award: B01-2; B02-2; B03-2; B15-2."), late.notes()
                .toString());
    }

    @Test
    void aDayBeforeTheAwardIsInTheMonthBeforeIt() {
        Study study = EXAMPLE.study();
        study.getProgrammes().get(0).setAwardDate("2026-04-02");
        DataTable table = timeline(study);
        assertHas(table, "2026-04-01 | −1 | Order at the latest: B01-2; B02-2; B03-2; B15-2 | delivery time of its type");
        assertTrue(table.notes().get(1).endsWith("in whole months, rounded down: a day before the award is in month −1."), table.notes()
                .toString());
    }

    @Test
    void theWholePlanIsClosedOutAfterTheLastOldBusIsScrapped() {
        Study study = EXAMPLE.study();
        study.getProgrammes().get(0).setScrapWithinDays(9000);
        study.getProgrammes().get(0).setCloseOutDays(1);
        List<String> lines = lines(timeline(study));
        String last = lines.stream().filter(l -> l.contains("Scrapped at the latest")).map(l -> l.substring(0, 10)).max(String::compareTo)
                .orElseThrow();
        assertTrue(lines.stream().anyMatch(l -> l.startsWith(last) && l.contains("| Close-out of the whole plan, not before |")), lines
                .toString());
        assertTrue(lines.stream().anyMatch(l -> l.endsWith("| 1 day after the last purchase that it pays for")), lines.toString());
    }

    @Test
    void theProgrammeWithoutADateIsNamedAndNoAwardIsDatedTwice() {
        Study study = EXAMPLE.study();
        study.getProgrammes().get(0).setAwardDate(null);
        study.getProgrammes().stream().filter(p -> p.getName().equals("Make-ready")).forEach(p -> p.setAwardDate("2026-03-01"));
        DataTable table = timeline(study);
        assertTrue(table.notes().get(1).endsWith("no date of the award of “Clean Fleet Fund” to count months from."), table.notes().toString());
        assertHas(table, "2026-03-01 |  | Award: “Make-ready” | noted in the study");
        assertFalse(lines(table).contains(" |  | Award | "));
    }
}
