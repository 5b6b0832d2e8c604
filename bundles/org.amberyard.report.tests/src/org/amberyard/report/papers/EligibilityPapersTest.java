package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.model.common.Quality;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.report.document.DataTable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class EligibilityPapersTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static DataTable table;
    private static PaperInput in;

    @BeforeAll
    static void evaluate() {
        in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
        table = EligibilityPapers.of(in).get(0);
    }

    private static String printed(DataTable of, String bus, String column) {
        int at = IntStream.range(0, of.columns().size()).filter(i -> of.columns().get(i).label().equals(column)).findFirst().orElseThrow();
        return of.rows().stream().filter(r -> r.cells().get(1).equals(bus)).map(r -> of.printed(r, at)).findFirst().orElseThrow();
    }

    @Test
    void aBusThatIsPaidForIsEligible() {
        assertEquals("T1c. Eligibility for “Clean Fleet Fund”, bus by bus", table.title());
        assertEquals("yes", printed(table, "B01", "Eligible"));
        assertEquals("", printed(table, "B01", "Rule that refuses it"));
        assertEquals("C", printed(table, "B01", "Body, old and new"));
        assertEquals("yes", printed(table, "B01", "One for one"));
        assertEquals("diesel, 2007", printed(table, "B01", "Old engine"));
        assertEquals("gasoline, 2012", printed(table, "B16", "Old engine"));
        assertEquals(in.replaced().size(), table.rows().size());
    }

    @Test
    void aBusThatARuleRefusesIsToldTheRuleAndItsNotice() {
        assertEquals("NO", printed(table, "B11", "Eligible"));
        assertEquals("it pays for purchases of 2027 to 2028", printed(table, "B11", "Rule that refuses it"));
        assertEquals("it pays for purchases of 2027 to 2028; old bus B06 moves to another place instead of being scrapped",
                printed(table, "B06", "Rule that refuses it"));
        assertEquals("published: State of Calderra, notice of funding, Clean Fleet Fund, round 2 (invented for this example), 2025-10-06",
                printed(table, "B11", "Where the rule comes from"));
        assertTrue(table.notes().get(0).contains("7 of 13; applied for: 7 of these. Of the 10 buses"), table.notes().get(0));
    }

    /** What a programme asks for and nobody has told refuses a bus, in other words than what is told and does not do. */
    @Test
    void whatIsNotToldIsToldApartFromWhatIsRefused() {
        Study study = EXAMPLE.study();
        study.getProgrammes().get(0).setLeastDaysPerWeek(4.5);
        study.getBuses().stream().filter(b -> b.getName().equals("B01")).forEach(b -> b.setDaysPerWeek(null));
        study.getBuses().stream().filter(b -> b.getName().equals("B02")).forEach(b -> b.setDaysPerWeek(2.0));
        DataTable asked = EligibilityPapers.of(EXAMPLE.in(study, PaperChoices.STANDARD)).get(0);
        assertEquals("not told", printed(asked, "B01", "Eligible"));
        assertEquals("the days a week in service of old bus B01 are not told; the programme asks for at least 4.5",
                printed(asked, "B01", "Rule that refuses it"));
        assertEquals("NO", printed(asked, "B02", "Eligible"));
        assertEquals("old bus B02 is in service 2 days a week, less than 4.5", printed(asked, "B02", "Rule that refuses it"));
        assertTrue(asked.notes().stream().anyMatch(n -> n.contains("old bus in service at least 4.5 days a week")), asked.notes().toString());
    }

    @Test
    void aRuleWithASourceOfItsOwnIsCitedByIt() {
        Study study = EXAMPLE.study();
        Programme fund = study.getProgrammes().get(0);
        fund.getSources().add(SourceNotes.of("lastYear", Quality.PUBLISHED, "Amendment 2 (invented)", "2026-08-01"));
        DataTable amended = EligibilityPapers.of(EXAMPLE.in(study, PaperChoices.STANDARD)).get(0);
        assertEquals("published: Amendment 2 (invented for this example), 2026-08-01", printed(amended, "B11", "Where the rule comes from"));
        fund.getSources().clear();
        DataTable unsaid = EligibilityPapers.of(EXAMPLE.in(study, PaperChoices.STANDARD)).get(0);
        assertEquals(RuleSources.NONE, printed(unsaid, "B11", "Where the rule comes from"));
    }

    @Test
    void aBusForWhichThePlanDoesNotApplyIsEligible() {
        Study study = EXAMPLE.study();
        step(study, "B02").getProgrammes().clear();
        DataTable fewer = EligibilityPapers.of(EXAMPLE.in(study, PaperChoices.STANDARD)).get(0);
        assertEquals("yes", printed(fewer, "B01", "Eligible"));
        assertEquals("eligible, not applied for", printed(fewer, "B02", "Eligible"));
        assertEquals("", printed(fewer, "B02", "Rule that refuses it"));
    }

    @Test
    void aPlanThatCountsOnCertainAwardsLeavesBusesEligible() {
        Study study = EXAMPLE.study();
        study.getProgrammes().get(0).setProbability(0.5);
        study.getPlans().get(ExamplePapers.ELECTRIC).setCertainAwardsOnly(true);
        PaperChoices choices = new PaperChoices(List.of(GrantTable.T1), Optional.of("Clean Fleet Fund"), false, Optional.empty());
        DataTable certain = EligibilityPapers.of(EXAMPLE.in(study, choices)).get(0);
        assertEquals("eligible, left out as not certain", printed(certain, "B01", "Eligible"));
        assertTrue(certain.notes().get(0).contains("7 of 13; applied for: 0 of these; left out, since the plan counts on certain awards "
                + "only: 7."), certain.notes().get(0));
    }

    @Test
    void busesBeyondTheMostAreNotEligible() {
        Study study = EXAMPLE.study();
        study.getProgrammes().get(0).setMaxBuses(5);
        DataTable five = EligibilityPapers.of(EXAMPLE.in(study, PaperChoices.STANDARD)).get(0);
        assertEquals("yes", printed(five, "B04", "Eligible"));
        assertEquals("NO", printed(five, "B05", "Eligible"));
        assertEquals("beyond the 5 buses the programme takes", printed(five, "B05", "Rule that refuses it"));
    }

    @Test
    void aProgrammeThatPaysForNoBusesHasNoTable() {
        PaperChoices choices = new PaperChoices(List.of(GrantTable.T1), Optional.of("Make-ready"), false, Optional.empty());
        PaperInput other = new PaperInput(in.result(), in.planIndex(), in.facts(), choices);
        List<DataTable> tables = GrantTable.T1.of(other);
        assertEquals(List.of("T1a", "T1b"), tables.stream().map(DataTable::name).toList());
        assertTrue(tables.get(1).notes().toString().contains("“Make-ready” pays for no buses"), tables.get(1).notes().toString());
    }

    private static Replacement step(Study study, String bus) {
        return study.getPlans().get(ExamplePapers.ELECTRIC).getReplacements().stream().filter(r -> r.getBus().getName().equals(bus))
                .findFirst().orElseThrow();
    }

    @Test
    void anotherBodyIsNamedAsAMismatchAndAsARule() {
        Study study = EXAMPLE.study();
        study.getProgrammes().stream().filter(p -> p.getName().equals("Clean Fleet Fund")).forEach(p -> p.setSameBodyType(true));
        step(study, "B01").setNewType(study.getVehicleTypes().stream().filter(t -> t.getName().equals("Electric A 118")).findFirst()
                .orElseThrow());
        PaperChoices choices = new PaperChoices(List.of(GrantTable.T1), Optional.of("Clean Fleet Fund"), false, Optional.empty());
        DataTable other = EligibilityPapers.of(EXAMPLE.in(study, choices)).get(0);
        assertEquals("DIFFERS: C, A", printed(other, "B01", "Body, old and new"));
        assertEquals("NO", printed(other, "B01", "Eligible"));
        assertTrue(printed(other, "B01", "Rule that refuses it").contains("old bus B01 has body type C, not A"));
    }
}
