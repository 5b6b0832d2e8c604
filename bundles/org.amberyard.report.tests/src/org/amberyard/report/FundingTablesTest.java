package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.funding.Conditions;
import org.amberyard.core.funding.EnergyCredit;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.OperatingAid;
import org.amberyard.core.funding.Payout;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.PricePath;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.why.Derivation;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

/** The small district: its electric plan buys two buses in 2026 with a grant that is paid the year after, and earns credits. */
class FundingTablesTest {
    private static final StudyResult RESULT = SampleDistrict.evaluated(funded());

    private final ResultTable lines = FundingTables.byLine().table(RESULT, UnitSystem.METRIC);
    private final ResultTable years = FundingTables.byYear().table(RESULT, UnitSystem.METRIC);

    private static StudyInput funded() {
        return funded(0, SampleDistrict.small().funding().programmes().get(0).conditions());
    }

    private static StudyInput funded(int firstYear, Conditions conditions) {
        StudyInput s = SampleDistrict.small();
        Programme grant = s.funding().programmes().get(0);
        Programme late = new Programme(grant.name(), grant.kind(), 1, firstYear, 9, 0.5, grant.offer(), grant.budget(), grant.match(),
                conditions, new Payout(1, Optional.empty()));
        FundingInput funding = new FundingInput(List.of(late), List.of(),
                List.of(new EnergyCredit("Credit", 0, 9, 0.05, PricePath.FLAT)),
                List.of(new OperatingAid("Aid", 0, 9, 0.5, 0.5, 12, 1)), FundingInput.Declared.NOTHING);
        return new StudyInput(s.name(), s.currency(), s.baseYear(), s.years(), s.money(), s.duty(), s.types(), s.buses(), s.depot(),
                s.prices(), funding, s.air(), s.rules(), s.plans(), s.baseline(), s.trips());
    }

    @Test
    void sourcesOfALinePayJustItsCost() {
        double open = 0;
        for (int row = 0; row < lines.rows().size(); row++) {
            double cost = (double) lines.cell(row, "cost");
            open = lines.cell(row, "order").equals(1) ? cost : open;
            open -= (double) lines.cell(row, "amount");
            assertEquals(open, (double) lines.cell(row, "left"), 0.005);
            assertEquals((double) lines.cell(row, "amount") / cost * 100, (double) lines.cell(row, "share"), 1e-9);
            if (lines.cell(row, "source").equals("Own money")) {
                assertEquals(0, open, 0.005);
            }
        }
    }

    @Test
    void theLimitThatBitIsNamed() {
        int bus = IntStream.range(0, lines.rows().size()).filter(r -> lines.cell(r, "source").equals("Clean bus grant")).findFirst()
                .orElseThrow();
        assertEquals("Electric in stages", lines.cell(bus, "plan"));
        assertEquals(2026, lines.cell(bus, "year"));
        assertEquals("bus", lines.cell(bus, "kind"));
        assertEquals("state", lines.cell(bus, "money"));
        assertEquals(50.0, lines.cell(bus, "probability"));
        assertEquals("2027", lines.cell(bus, "paid_in"));
        double asked = (double) lines.cell(bus, "asked");
        assertEquals(Math.min(asked, 180_000), (double) lines.cell(bus, "amount"), 0.005);
        assertEquals(asked > 180_000 ? "cap" : "paid in full", lines.cell(bus, "limit"));
        assertEquals("Own money", lines.cell(bus + 1, "source"));
        assertEquals(2, lines.cell(bus + 1, "order"));
        assertNull(lines.cell(bus + 1, "asked"));
        assertNull(lines.cell(bus + 1, "paid_in"));
    }

    @Test
    void everyBusIsToldWhetherItIsEligible() {
        ResultTable buses = EligibilityTable.table().table(RESULT, UnitSystem.METRIC);
        assertEquals(List.of("Electric in stages", "Clean bus grant", 2026), buses.rows().get(0).subList(0, 3));
        assertEquals("yes", buses.cell(0, "eligible"));
        assertNull(buses.cell(0, "rule"));
        assertEquals("yes", buses.cell(0, "applied"));
        assertEquals(buses.cell(0, "old_body"), buses.cell(0, "new_body"));
        assertTrue(buses.rows().stream().noneMatch(r -> r.get(0).equals("Like for like")), "it buys no electric bus");
    }

    @Test
    void aBusThatIsRefusedIsToldEveryRule() {
        Conditions old = new Conditions(false, false, false, false, false, OptionalInt.of(1990), false, 0);
        ResultTable buses = EligibilityTable.table().table(SampleDistrict.evaluated(funded(1, old)), UnitSystem.METRIC);
        assertEquals("no", buses.cell(0, "eligible"));
        assertEquals("it pays for purchases of 2027 to 2035; the engine of old bus " + buses.cell(0, "old_bus") + " is of model year "
                + buses.cell(0, "old_engine_year") + ", newer than 1990", buses.cell(0, "rule"));
    }

    @Test
    void everyPlanEndsUpInTheCosts() {
        for (PlanResult plan : RESULT.plans()) {
            double stated = IntStream.range(0, years.rows().size()).filter(r -> years.cell(r, "plan").equals(plan.name()))
                    .mapToDouble(r -> (double) years.cell(r, "stated")).sum();
            CostLedger ledger = plan.ledger();
            double funding = ledger.amount(CostCategory.FUNDING) + ledger.amount(CostCategory.CREDIT_REVENUE)
                    + ledger.amount(CostCategory.OPERATING_AID) + ledger.amount(CostCategory.AWARDS_DUE)
                    + ledger.amount(CostCategory.AID_DUE);
            assertEquals(-funding, stated, 1e-6);
            assertTrue(stated > 0);
        }
    }

    @Test
    void sourcesAreToldByYear() {
        List<Object> kinds = IntStream.range(0, years.rows().size()).filter(r -> years.cell(r, "plan").equals("Electric in stages"))
                .mapToObj(r -> years.cell(r, "year") + " " + years.cell(r, "kind") + " " + years.cell(r, "source")).limit(4)
                .map(Object.class::cast).toList();
        assertEquals(List.of("2026 low-carbon credit Credit", "2027 award Clean bus grant", "2027 low-carbon credit Credit",
                "2027 operating aid Aid"), kinds);
        assertEquals(2036, years.cell(years.rows().size() - 1, "year"), "aid for the last year comes after the study");
    }

    @Test
    void amountsTellHowTheyComeAbout() {
        int place = ResultTables.titles().indexOf(lines.title());
        for (int row = 0; row < lines.rows().size(); row++) {
            for (String column : List.of("cost", "amount")) {
                Derivation why = ResultTables.why(place, RESULT, row, column(lines, column));
                assertEquals((double) lines.cell(row, column), why.value(), 1e-6);
            }
        }
        int yearsPlace = ResultTables.titles().indexOf(years.title());
        for (int row = 0; row < years.rows().size(); row++) {
            assertEquals((double) years.cell(row, "amount"),
                    ResultTables.why(yearsPlace, RESULT, row, column(years, "amount")).value(), 1e-6);
        }
    }

    private static int column(ResultTable table, String name) {
        return IntStream.range(0, table.columns().size()).filter(c -> table.columns().get(c).name().equals(name)).findFirst()
                .orElseThrow();
    }
}
