package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.finance.FinanceLine;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.why.Derivation;
import org.amberyard.testsupport.SampleDistrict;
import org.amberyard.testsupport.SampleFinance;
import org.junit.jupiter.api.Test;

/** The small district: like for like in cash, and an electric plan with a loan on buses and a lease of ports under a cap. */
class FinanceTablesTest {
    private static final double CENT = 0.005;
    private final StudyResult result = SampleDistrict.evaluated(SampleFinance.taxed(
            SampleFinance.financed(SampleDistrict.small()), 0.25));

    private static ResultTable table(StudyResult of, String name) {
        return ResultTables.of(of, UnitSystem.US).stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    private static double number(ResultTable table, int row, String column) {
        return (Double) table.cell(row, column);
    }

    @Test
    void appropriationIsTheSumOfItsColumns() {
        ResultTable budget = table(result, "budget_by_year");
        assertEquals(2 * result.input().years(), budget.rows().size());
        for (int row = 0; row < budget.rows().size(); row++) {
            double sum = 0;
            for (String column : List.of("purchases", "funding", "sales", "borrowed", "debt_service", "running", "taxes")) {
                sum += number(budget, row, column);
            }
            assertEquals(sum, number(budget, row, "appropriation"), CENT);
        }
    }

    @Test
    void yearsAboveTheCapAreFlagged() {
        ResultTable budget = table(result, "budget_by_year");
        int years = result.input().years();
        assertNull(budget.cell(0, "cap"));
        assertNull(budget.cell(0, "is_above"));
        int flagged = 0;
        for (int row = years; row < 2 * years; row++) {
            double above = number(budget, row, "appropriation") - SampleFinance.CAP;
            assertEquals(Math.max(0, above), number(budget, row, "above_cap"), CENT);
            assertEquals(above > CENT ? "yes" : "no", budget.cell(row, "is_above"));
            flagged += above > CENT ? 1 : 0;
        }
        assertTrue(flagged > 0 && flagged < years);
    }

    @Test
    void financingFollowsTheLedger() {
        ResultTable financing = table(result, "financing");
        PlanResult plan = result.plans().get(1);
        int years = result.input().years();
        assertEquals(2 * years, financing.rows().size(), "both plans are taxed");
        for (int year = 0; year < years; year++) {
            assertEquals(plan.finance().ledger().amount(year, FinanceLine.INTEREST),
                    number(financing, years + year, "interest"), 0);
            assertEquals(plan.finance().owedAtEndOf(year), number(financing, years + year, "owed"), 0);
            assertEquals(0, number(financing, year, "borrowed"), 0);
        }
        StudyResult untaxed = SampleDistrict.evaluated(SampleFinance.financed(SampleDistrict.small()));
        assertEquals(years, table(untaxed, "financing").rows().size());
    }

    @Test
    void paymentsLeadEveryDebtToZero() {
        ResultTable debts = table(result, "debts");
        ResultTable payments = table(result, "debt_payments");
        assertTrue(debts.rows().size() > 1);
        assertEquals(List.of("Electric in stages", "Bank loan", "loan"), debts.rows().get(0).subList(0, 3));
        int row = 0;
        for (int debt = 0; debt < debts.rows().size(); debt++) {
            double principal = 0;
            double interest = 0;
            do {
                principal += number(payments, row, "principal");
                interest += number(payments, row, "interest");
                row++;
            } while (row < payments.rows().size() && !payments.cell(row, "number").equals(1));
            assertEquals(0, number(payments, row - 1, "balance"), 0);
            assertEquals(number(debts, debt, "sum"), principal, CENT);
            assertEquals(number(debts, debt, "interest"), interest, CENT);
        }
        assertEquals(payments.rows().size(), row);
    }

    @Test
    void measuresHoldTogether() {
        ResultTable measures = table(result, "measures");
        assertNull(measures.cell(0, "net_saving"));
        assertNull(measures.cell(0, "internal_rate"));
        assertEquals(number(measures, 1, "operating_saving") - number(measures, 1, "added_investment"),
                number(measures, 1, "net_saving"), CENT);
        assertEquals(number(measures, 0, "present_cost") - number(measures, 1, "present_cost"),
                number(measures, 1, "net_saving"), CENT);
        assertEquals(number(measures, 0, "financed_cost") - number(measures, 1, "financed_cost"),
                number(measures, 1, "financed_saving"), CENT);
        for (int row = 0; row < 2; row++) {
            assertEquals(number(measures, row, "present_cost") + number(measures, row, "financing")
                    + number(measures, row, "taxes"), number(measures, row, "financed_cost"), CENT);
        }
        assertEquals(0, number(measures, 0, "financing"), 0);
        assertTrue(number(measures, 0, "taxes") < 0);
        assertNotNull(measures.cell(1, "internal_rate"));
        ResultTable headline = table(result, "headline");
        assertEquals(headline.cell(1, "discounted_payback"), measures.cell(1, "discounted_payback"));
    }

    private Derivation why(String table, int row, String column) {
        List<ResultTable> tables = ResultTables.of(result, UnitSystem.US);
        int place = IntStream.range(0, tables.size()).filter(i -> tables.get(i).name().equals(table)).findFirst().orElseThrow();
        return ResultTables.why(place, result, row, tables.get(place).column(column));
    }

    @Test
    void figuresSayHowTheyComeAbout() {
        Derivation net = why("measures", 1, "net_saving");
        assertEquals(number(table(result, "measures"), 1, "net_saving"), net.value(), CENT);
        Derivation purchases = net.parts().get(1).parts().get(0);
        assertEquals("Bus purchase", purchases.name());
        assertTrue(purchases.parts().get(0).parts().size() > 0, "down to the years");
        Derivation appropriation = why("budget_by_year", 3, "appropriation");
        assertEquals(number(table(result, "budget_by_year"), 3, "appropriation"), appropriation.value(), CENT);
        ResultTable debts = table(result, "debts");
        assertEquals(number(debts, 0, "sum"), why("debts", 0, "sum").value(), CENT);
        assertEquals(number(debts, 0, "payment"), why("debts", 0, "payment").value(), CENT);
    }

    @Test
    void theHeadlineGivesBothViews() {
        String cost = Headline.of(result, UnitSystem.US).get(0).cost();
        assertTrue(cost.contains(" after financing and taxes, "), cost);
        StudyResult cash = SampleDistrict.evaluated(SampleDistrict.small());
        assertTrue(!Headline.of(cash, UnitSystem.US).get(0).cost().contains("financing"));
    }
}
