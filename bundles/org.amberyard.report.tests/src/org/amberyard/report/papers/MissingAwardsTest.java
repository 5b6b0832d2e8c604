package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.study.Study;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Section;
import org.junit.jupiter.api.Test;

/** Documents about awards that are not made, are left out, or may fail. */
class MissingAwardsTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static final String FUND = "Clean Fleet Fund";

    private static PaperInput applied(Study study, String programme) {
        return EXAMPLE.in(study, new PaperChoices(List.of(GrantTable.values()), Optional.of(programme), false, Optional.empty()));
    }

    private static Programme fund(Study study) {
        return study.getProgrammes().stream().filter(p -> p.getName().equals(FUND)).findFirst().orElseThrow();
    }

    private static String text(Section of) {
        return of.blocks().toString().replace('\u00a0', ' ');
    }

    private static PaperInput closed() {
        Study study = EXAMPLE.study();
        fund(study).setFirstYear(2024);
        fund(study).setLastYear(2025);
        return applied(study, FUND);
    }

    @Test
    void nothingIsAppliedForWhereNothingIsPaid() {
        PaperInput in = closed();
        String why = "“Clean Fleet Fund” pays nothing in this plan: it pays for purchases of 2024 to 2025";
        String decision = text(BoardDecision.of(in));
        assertFalse(decision.contains("USD 0"), decision);
        assertFalse(decision.contains("an application to"), decision);
        assertTrue(decision.contains(why), decision);
        assertTrue(decision.contains("; accepts “"), decision);
        String summary = text(GrantSet.of(in).sections().get(0));
        assertFalse(summary.contains("Applied to"), summary);
        assertTrue(summary.contains(why), summary);
        DataTable timeline = GrantTable.T9.of(in).get(0);
        assertTrue(timeline.columns().get(1).toFill());
        assertTrue(timeline.notes().get(1).contains(why + ". So no months are counted from its award."), timeline.notes().toString());
        assertFalse(GrantTable.T8.of(in).get(0).rows().stream().anyMatch(r -> r.cells().contains("grant only")));
    }

    @Test
    void aProgrammeThatThePlanDoesNotNameIsSaidNotToBeAppliedTo() {
        Study study = EXAMPLE.study();
        Programme other = study.getProgrammes().stream().filter(p -> p.getName().equals("National Fleet Rebate")).findFirst().orElseThrow();
        study.getPlans().get(ExamplePapers.ELECTRIC).getReplacements().forEach(r -> r.getProgrammes().remove(other));
        String decision = text(BoardDecision.of(applied(study, other.getName())));
        assertTrue(decision.contains("“National Fleet Rebate” pays nothing in this plan: the plan applies to it for no purchase."), decision);
    }

    @Test
    void aProgrammeThatPaysForBusesIsAppliedToBeforeOneThatPaysMore() {
        Study study = EXAMPLE.study();
        fund(study).setBudget(100_000.0);
        study.getProgrammes().stream().filter(p -> !p.getName().equals(FUND) && !p.getName().equals("Make-ready"))
                .forEach(p -> p.setLastYear(p.getFirstYear()));
        ProjectMoney money = ProjectMoney.of(EXAMPLE.in(study, PaperChoices.STANDARD));
        assertTrue(money.paidBy("Make-ready").compareTo(money.paidBy(FUND)) > 0, money.paidBy("Make-ready").toString());
        assertEquals(Optional.of(FUND), money.programme());
    }

    private static Study unsure() {
        Study study = EXAMPLE.study();
        fund(study).setProbability(0.6);
        return study;
    }

    @Test
    void whatAPlanLeavesOutIsNamedWithItsAmount() {
        Study study = unsure();
        String amount = CellFormat.MONEY.print(ProjectMoney.of(applied(study, FUND)).paidBy(FUND));
        study.getPlans().get(ExamplePapers.ELECTRIC).setCertainAwardsOnly(true);
        PaperInput in = applied(study, FUND);
        String leftOut = "The plan counts on certain awards only and leaves out: “Clean Fleet Fund”, probability 60 %, which would pay USD "
                + amount + ".";
        for (DataTable table : GrantTable.T5.of(in)) {
            assertTrue(table.notes().contains(leftOut), table.notes().toString());
        }
        assertTrue(text(GrantSet.of(in).sections().get(0)).contains(leftOut));
        assertTrue(text(BoardDecision.of(in)).contains(leftOut));
        assertTrue(text(BoardDecision.of(in)).contains("pays nothing in this plan: the plan counts on certain awards only."));
        assertTrue(GrantTable.T3.of(in).get(0).rows().stream().anyMatch(r -> r.cells().contains("eligible, left out as not certain")));
    }

    @Test
    void theMemoSaysWhatIsCountedThoughNotCertainAndWhatItCostsIfItFails() {
        Study study = unsure();
        PaperInput in = applied(study, FUND);
        String caveat = "Counted in full, though not certain: “Clean Fleet Fund”, probability 60 %. Expected money is less.";
        assertEquals(1, BoardMemo.of(in).sections().stream().map(MissingAwardsTest::text).filter(t -> t.contains(caveat)).count());
        assertTrue(BoardMemo.of(in).tables().get(1).notes().contains("Not all awards are certain: see “What to decide”."));
        study.getPlans().get(ExamplePapers.ELECTRIC).setCertainAwardsOnly(true);
        String alone = CellFormat.MONEY.print(ProjectMoney.of(applied(study, FUND)).own());
        assertTrue(text(BoardDecision.of(in)).contains(caveat + " If none of these awards is made, own money is USD " + alone
                + " instead of USD " + CellFormat.MONEY.print(ProjectMoney.of(in).own()) + "."), text(BoardDecision.of(in)));
        assertFalse(text(BoardDecision.of(applied(EXAMPLE.study(), FUND))).contains("not certain"));
    }
}
