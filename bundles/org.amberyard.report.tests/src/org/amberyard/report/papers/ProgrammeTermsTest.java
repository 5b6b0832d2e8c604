package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.study.Study;
import org.amberyard.report.document.DataTable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ProgrammeTermsTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static PaperInput in;

    @BeforeAll
    static void evaluate() {
        in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
    }

    private static DataTable table(GrantTable of, int place) {
        return of.of(in).get(place);
    }

    @Test
    void programmesAreToldWithTheirTermsAndTheirNotice() {
        DataTable sources = table(GrantTable.T5, 0);
        Map<Object, String> terms = new HashMap<>();
        sources.rows().forEach(r -> terms.put(r.cells().get(0), sources.printed(r, ExamplePapers.column(sources, "Restrictions")).replace('\u00a0', ' ')));
        assertEquals("purchases of 2027 to 2028; electric bus of body type A: 50 % of the price above the like-for-like bus, at most "
                + "USD 140,000; electric bus of body type C: 50 % of the price above the like-for-like bus, at most USD 190,000; "
                + "charging ports: 50 % of the cost, at most USD 20,000 each; site works: 50 % of the cost; at most 10 buses; "
                + "new buses only; old bus scrapped within 90 days; match of 25 % of the cost that it covers from non-federal money; "
                + "not with National Fleet Rebate; closed out within 180 days of the last purchase; yearly report of distance and energy "
                + "for five years", terms.get("Clean Fleet Fund"));
        assertEquals("purchases of 2027 to 2040; charging ports: 80 % of the cost, at most USD 14,000 each; site works: 80 % of the "
                + "cost", terms.get("Make-ready"), "no bus is paid for, so nothing is asked of buses");
        assertTrue(sources.notes().contains("Rules of “Make-ready”: published: Kestrow Electric Cooperative, make-ready terms, sheet "
                + "52, effective 1 July 2025 (invented for this example), 2025-07-01."), sources.notes().toString());
    }

    @Test
    void limitsThatANoticeSetsAreTold() {
        Study study = EXAMPLE.study();
        Programme fund = study.getProgrammes().get(2);
        fund.setBudget(400_000.0);
        fund.setBudgetPerYear(125_000.0);
        fund.setTrainingShare(0.125);
        fund.setTrainingCap(9000.0);
        fund.setAmountPerPort(500);
        fund.setMatchShare(0.2);
        fund.setLagYears(1);
        fund.setMaxBuses(0);
        PaperInput limited = EXAMPLE.in(study, ExamplePapers.tables(GrantTable.T5));
        String told = Restrictions.of(limited, limited.study().funding().programmes().get(2)).replace('\u00a0', ' ');
        assertEquals("purchases of 2027 to 2040; charging ports: USD 500 each and 80 % of the cost, at most USD 14,000 each; site "
                + "works: 80 % of the cost; training and tools: 12.5 % of the cost, at most USD 9,000 each; at most USD 400,000 in "
                + "all; at most USD 125,000 for the purchases of a year; paid years after the purchase: 1; match of 20 % of the "
                + "cost that it covers from own money", told);
    }
}
