package org.amberyard.core.money;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A ledger of two rows and two years in nominal money, each sum worked by hand. */
class CostLedgerTest {
    private static final double EXACT = 1e-12;
    private static final double INFLATION = 0.02;
    private static final double REAL = 0.03;
    private static final MoneyRules NOMINAL = new MoneyRules(new MoneyRates(REAL, INFLATION), MoneyBasis.NOMINAL, false);
    private static final MoneyRules CONSTANT = new MoneyRules(new MoneyRates(REAL, INFLATION), MoneyBasis.CONSTANT, true);

    /** A bus bought in the second year, fuel in both and in both rows, a value left, an award. */
    private static CostLedger ledger(MoneyRules rules) {
        CostLedger.Builder costs = new CostLedger.Builder(List.of("B01", "Yard"), 2, rules);
        costs.add(0, 1, CostCategory.BUS_PURCHASE, 1000);
        costs.add(0, 0, CostCategory.FUEL, 100);
        costs.add(0, 1, CostCategory.FUEL, 50);
        costs.add(1, 1, CostCategory.FUEL, 7);
        costs.add(1, 1, CostCategory.FUEL, 3);
        costs.add(0, 1, CostCategory.BUS_VALUE_LEFT, -400);
        costs.add(1, 0, CostCategory.FUNDING, -30);
        return costs.build();
    }

    @Test
    void costsRiseFromTheBaseDateToTheTimeAtWhichTheyFall() {
        CostLedger ledger = ledger(NOMINAL);
        assertEquals(1000 * 1.02, ledger.amount(0, 1, CostCategory.BUS_PURCHASE), EXACT);
        assertEquals(100 * 1.02, ledger.amount(0, 0, CostCategory.FUEL), EXACT);
        assertEquals(50 * 1.02 * 1.02, ledger.amount(0, 1, CostCategory.FUEL), EXACT);
        assertEquals(-400 * 1.02 * 1.02, ledger.amount(0, 1, CostCategory.BUS_VALUE_LEFT), EXACT);
        assertEquals(-30, ledger.amount(1, 0, CostCategory.FUNDING), EXACT);
        assertEquals(100, ledger(CONSTANT).amount(0, 0, CostCategory.FUEL), 0);
    }

    @Test
    void sumsOverRowsYearsAndCategories() {
        CostLedger ledger = ledger(CONSTANT);
        assertEquals(List.of("B01", "Yard"), ledger.rows());
        assertEquals(2, ledger.years());
        assertEquals(CONSTANT, ledger.rules());
        assertEquals(60, ledger.amount(1, CostCategory.FUEL), EXACT);
        assertEquals(160, ledger.amount(CostCategory.FUEL), EXACT);
        assertEquals(70, ledger.yearTotal(0), EXACT);
        assertEquals(660, ledger.yearTotal(1), EXACT);
        assertEquals(650, ledger.rowTotal(0, 1), EXACT);
        assertEquals(-30, ledger.rowTotal(1, 0), EXACT);
        assertEquals(1000, ledger.amount(1, FlowTime.START), EXACT);
        assertEquals(60, ledger.amount(1, FlowTime.RUNNING), EXACT);
        assertEquals(-400, ledger.amount(1, FlowTime.END), EXACT);
    }

    @Test
    void presentValueDiscountsEachCostFromItsTime() {
        CostLedger ledger = ledger(CONSTANT);
        double fuel = 100 / Math.pow(1.03, 0.5) + 60 / Math.pow(1.03, 1.5);
        assertEquals(fuel, ledger.presentValue(CostCategory.FUEL), 1e-9);
        assertEquals(1000 / 1.03, ledger.presentValue(CostCategory.BUS_PURCHASE), 1e-9);
        assertEquals(-400 / (1.03 * 1.03), ledger.presentValue(CostCategory.BUS_VALUE_LEFT), 1e-9);
        assertEquals(fuel + 1000 / 1.03 - 400 / (1.03 * 1.03) - 30, ledger.presentValue(), 1e-9);
    }

    @Test
    void realAndNominalLedgersAreWorthTheSame() {
        CostLedger real = ledger(new MoneyRules(NOMINAL.rates(), MoneyBasis.CONSTANT, false));
        assertEquals(real.presentValue(), ledger(NOMINAL).presentValue(), 1e-9);
    }

    @Test
    void moreIsAddedToACopy() {
        CostLedger ledger = ledger(CONSTANT);
        CostLedger.Builder more = ledger.more();
        more.add(1, 0, CostCategory.FUEL, 5);
        assertEquals(5, more.build().amount(1, 0, CostCategory.FUEL), EXACT);
        assertEquals(100, more.build().amount(0, 0, CostCategory.FUEL), EXACT);
        assertEquals(0, ledger.amount(1, 0, CostCategory.FUEL));
    }

    @Test
    void cellsOfConstantMoneyAreStatedAsIfTheyWereAddedOneByOne() {
        double[] constant = new double[CostLedger.cells(2, 2)];
        assertEquals(2 * 2 * CostCategory.values().length, constant.length);
        constant[CostLedger.cell(2, 0, 1, CostCategory.BUS_PURCHASE)] = 1000;
        constant[CostLedger.cell(2, 0, 0, CostCategory.FUEL)] = 100;
        constant[CostLedger.cell(2, 0, 1, CostCategory.FUEL)] = 50;
        constant[CostLedger.cell(2, 1, 1, CostCategory.FUEL)] = 10;
        constant[CostLedger.cell(2, 0, 1, CostCategory.BUS_VALUE_LEFT)] = -400;
        constant[CostLedger.cell(2, 1, 0, CostCategory.FUNDING)] = -30;
        CostLedger made = CostLedger.ofConstant(List.of("B01", "Yard"), 2, NOMINAL, constant);
        CostLedger added = ledger(NOMINAL);
        for (CostCategory category : CostCategory.values()) {
            for (int year = 0; year < 2; year++) {
                assertEquals(added.amount(0, year, category), made.amount(0, year, category), 1e-9, category.label());
                assertEquals(added.amount(1, year, category), made.amount(1, year, category), 1e-9, category.label());
            }
        }
        assertEquals(added.presentValue(), made.presentValue(), 1e-9);
    }

    @Test
    void nominalCostsAreTheSameWhateverTheStudyStates() {
        NominalCosts ofNominal = new NominalCosts(ledger(NOMINAL));
        NominalCosts ofReal = new NominalCosts(ledger(new MoneyRules(NOMINAL.rates(), MoneyBasis.CONSTANT, false)));
        assertEquals(60 * 1.02 * 1.02, ofReal.amount(1, CostCategory.FUEL), 1e-9);
        assertEquals(60 * 1.02 * 1.02, ofNominal.amount(1, CostCategory.FUEL), 1e-9);
        assertEquals(50 * 1.02 * 1.02, ofReal.amount(0, 1, CostCategory.FUEL), 1e-9);
        assertEquals(50 * 1.02 * 1.02, ofNominal.amount(0, 1, CostCategory.FUEL), 1e-9);
    }

    @Test
    void groupsAddUpTheirCategories() {
        CostLedger ledger = ledger(CONSTANT);
        assertEquals(60, CostGroups.amount(ledger, 1, CostCategory.Group.ENERGY), EXACT);
        assertEquals(50, CostGroups.amount(ledger, 0, 1, CostCategory.Group.ENERGY), EXACT);
        assertEquals(-30, CostGroups.amount(ledger, 0, CostCategory.Group.FUNDING), EXACT);
        assertEquals(List.of(CostCategory.FUEL, CostCategory.EXHAUST_FLUID, CostCategory.HEATER_FUEL, CostCategory.ELECTRIC_ENERGY,
                CostCategory.ELECTRIC_DEMAND, CostCategory.ELECTRIC_FIXED), CostGroups.categories(CostCategory.Group.ENERGY));
    }

    @Test
    void investmentIsWhatIsBoughtItsAwardsAndWhatIsLeftOfIt() {
        List<CostCategory> running = List.of(CostCategory.CREDIT_REVENUE, CostCategory.OPERATING_AID, CostCategory.AID_DUE);
        for (CostCategory category : CostCategory.values()) {
            boolean use = category.group() == CostCategory.Group.ENERGY || category.group() == CostCategory.Group.UPKEEP;
            assertEquals(!use && !running.contains(category), CostGroups.investment(category), category.label());
        }
    }
}
