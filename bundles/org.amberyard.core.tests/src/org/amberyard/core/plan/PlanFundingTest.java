package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.funding.BusAward;
import org.amberyard.core.funding.Conditions;
import org.amberyard.core.funding.EnergyCredit;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.OperatingAid;
import org.amberyard.core.funding.Payout;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.Purchase;
import org.amberyard.core.funding.SampleProgramme;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.money.MoneyRules;
import org.amberyard.core.money.PricePath;
import org.amberyard.core.yard.YardYear;
import org.junit.jupiter.api.Test;

/** Funding of whole plans: how awards, credits and aid reach the ledger. */
class PlanFundingTest {
    private static final double CENT = 0.005;
    private static final double AWARD = 50_000;
    private static final MoneyRates RATES = new MoneyRates(0.02, 0.025);
    private static final MoneyRules CONSTANT = new MoneyRules(RATES, MoneyBasis.CONSTANT, false);
    private static final OperatingAid AID = new OperatingAid("Aid", 0, 20, 0.55, 0.4, 12, 1);
    private static final EnergyCredit CREDIT = new EnergyCredit("Credit", 1, 2, 0.06, new PricePath(-0.03, List.of()));

    private static SampleProgramme fund() {
        return SampleProgramme.named("P").forBuses(new BusAward(AWARD, 0, 0, AWARD));
    }

    private static Conditions held(int years) {
        return new Conditions(false, false, false, false, false, OptionalInt.empty(), false, years);
    }

    private static PlanInput.Replacement electric(int year, int place, Integer... programmes) {
        return new PlanInput.Replacement(year, place, OptionalInt.of(TinyDistrict.ELECTRIC), OptionalInt.empty(), List.of(programmes));
    }

    private static PlanInput steps(PlanInput.Replacement... steps) {
        return new PlanInput("Steps", List.of(steps), List.of(new PlanInput.PortPurchase(0, 0, 2, List.of())), List.of(), List.of());
    }

    private static StudyResult evaluated(MoneyRules money, FundingInput funding, PlanInput plan) {
        StudyInput study = TinyDistrict.withFunding(TinyDistrict.withPlans(TinyDistrict.study(money), TinyDistrict.dieselPlan(), plan),
                funding);
        return StudyEvaluation.of(study, DutyTable.of(study.duty()));
    }

    private static PlanResult plan(Programme programme, PlanInput plan) {
        return evaluated(CONSTANT, FundingInput.of(List.of(programme)), plan).plans().get(1);
    }

    private static FundingInput everything(Programme programme) {
        return new FundingInput(List.of(programme), List.of(), List.of(CREDIT), List.of(AID), FundingInput.Declared.NOTHING);
    }

    @Test
    void anAwardIsPaidAfterItsLagInMoneyOfItsYear() {
        CostLedger ledger = plan(fund().payout(new Payout(2, Optional.empty())).built(), steps(electric(1, 1, 0))).ledger();
        assertEquals(-AWARD / Math.pow(1.025, 3), ledger.amount(1, 3, CostCategory.FUNDING), CENT);
        assertEquals(ledger.amount(1, 3, CostCategory.FUNDING), ledger.amount(CostCategory.FUNDING), 0);
    }

    @Test
    void whatIsPaidAfterTheStudyCountsAtItsEndWithWhatItIsWorthThen() {
        CostLedger ledger = plan(fund().payout(new Payout(4, Optional.empty())).built(), steps(electric(2, 1, 0))).ledger();
        assertEquals(0, ledger.amount(CostCategory.FUNDING), 0);
        assertEquals(-AWARD * DiscountFactor.single(RATES.nominal(), 6), ledger.presentValue(CostCategory.AWARDS_DUE), CENT);
    }

    @Test
    void aBusThatLeavesEarlyPaysBackItsAward() {
        PlanInput twice = steps(electric(1, 1, 0), electric(3, 1));
        PlanResult plan = plan(fund().conditions(held(5)).built(), twice);
        assertEquals(AWARD * 3 / 5 / Math.pow(1.025, 3), plan.ledger().amount(1, 3, CostCategory.FUNDING_REPAID), CENT);
        assertEquals(2, plan.funding().repayments().get(0).servedYears());
        assertEquals(0, plan(fund().conditions(held(2)).built(), twice).ledger().amount(CostCategory.FUNDING_REPAID), 0);
    }

    @Test
    void onlyOldBusesOfNewOnesThatArePaidForAreScrapped() {
        Programme one = fund().budget(1, 1e9, 1e9).conditions(Conditions.SCRAP).built();
        assertEquals(Set.of("1"), plan(one, steps(electric(1, 0, 0), electric(1, 1, 0))).fleet().scrapped());
        assertEquals(Set.of(), plan(fund().budget(0, 1e9, 1e9).conditions(Conditions.SCRAP).built(), steps(electric(1, 0, 0)))
                .fleet().scrapped());
    }

    @Test
    void anOldBusThatMovesOnIsNotScrappedAndTheProgrammeDoesNotPay() {
        PlanInput.Replacement moves = new PlanInput.Replacement(1, 0, OptionalInt.of(TinyDistrict.ELECTRIC), OptionalInt.of(2),
                List.of(0));
        assertEquals(0, plan(fund().conditions(Conditions.SCRAP).built(), steps(moves)).ledger().amount(CostCategory.FUNDING), 0);
        Conditions oneForOne = new Conditions(false, false, false, true, false, OptionalInt.empty(), false, 0);
        assertTrue(plan(fund().conditions(oneForOne).built(), steps(moves)).ledger().amount(CostCategory.FUNDING) < 0);
    }

    @Test
    void aBusInAnEmptyPlaceIsGrowthOfTheFleet() {
        Conditions oneForOne = new Conditions(false, false, false, true, false, OptionalInt.empty(), false, 0);
        PlanInput.Replacement gone = new PlanInput.Replacement(1, 2, OptionalInt.empty(), OptionalInt.empty(), List.of());
        PlanResult grown = plan(fund().conditions(oneForOne).built(), steps(gone, electric(2, 2, 0)));
        assertEquals(0, grown.ledger().amount(CostCategory.FUNDING), 0);
    }

    /** Two diesels of one age, one award: the older engine gets it, in whatever order the buses stand in the list. */
    @Test
    void theOrderOfBusesDecidesNothing() {
        Programme one = fund().budget(1, 1e9, 1e9).conditions(Conditions.SCRAP).built();
        StudyInput study = TinyDistrict.withFunding(TinyDistrict.study(), FundingInput.of(List.of(one)));
        List<BusInput> swapped = List.of(study.buses().get(1), study.buses().get(0), study.buses().get(2));
        double ahead = presentCost(TinyDistrict.withPlans(study, TinyDistrict.dieselPlan(),
                steps(electric(1, 0, 0), electric(1, 1, 0))));
        double behind = presentCost(TinyDistrict.withPlans(TinyDistrict.withBuses(study, swapped), TinyDistrict.dieselPlan(),
                steps(electric(1, 0, 0), electric(1, 1, 0))));
        assertEquals(ahead, behind, CENT);
    }

    private static double presentCost(StudyInput study) {
        return StudyEvaluation.of(study, DutyTable.of(study.duty())).plans().get(1).measures().presentCost();
    }

    /** Grants count whenever they are paid; aid is none. */
    @Test
    void theGrantOfAProjectIsItsAwardsWheneverTheyArePaid() {
        OperatingAid operating = new OperatingAid("Aid", 0, 20, 0.5, 0, 12, 0);
        for (int lag : new int[] {0, 1, 9}) {
            Programme late = fund().payout(new Payout(lag, Optional.empty())).built();
            StudyResult result = evaluated(CONSTANT, new FundingInput(List.of(late), List.of(), List.of(), List.of(operating),
                    FundingInput.Declared.NOTHING), steps(electric(1, 1, 0)));
            assertEquals(AWARD / Math.pow(1.025, 1), ProjectCost.of(result, result.plans().get(1), ReplacedBuses.of(result, 1)).grant(),
                    CENT);
        }
    }

    /** Aid on operating cost alone: its worth is its share of the worth of that cost, put off by the lag. */
    @Test
    void aidTakesBackItsShareOfASaving() {
        OperatingAid operating = new OperatingAid("Aid", 0, 20, 0.55, 0, 12, 1);
        StudyResult result = evaluated(CONSTANT, new FundingInput(List.of(), List.of(), List.of(), List.of(operating),
                FundingInput.Declared.NOTHING), TinyDistrict.electricPlanWithoutAwards());
        double[] aid = new double[2];
        double[] cost = new double[2];
        for (int plan = 0; plan < 2; plan++) {
            CostLedger ledger = result.plans().get(plan).ledger();
            aid[plan] = ledger.presentValue(CostCategory.OPERATING_AID) + ledger.presentValue(CostCategory.AID_DUE);
            cost[plan] = operating(ledger);
            assertEquals(0, ledger.amount(0, CostCategory.OPERATING_AID), 0);
        }
        double lag = DiscountFactor.single(RATES.nominal(), 1);
        assertEquals(-0.55 * lag * cost[0], aid[0], CENT);
        assertEquals(-0.55 * lag * (cost[1] - cost[0]), aid[1] - aid[0], CENT);
        assertTrue(Math.abs(cost[1] - cost[0]) > 100);
    }

    private static double operating(CostLedger ledger) {
        double sum = 0;
        for (CostCategory category : CostCategory.values()) {
            if (category.group() == CostCategory.Group.ENERGY || category.group() == CostCategory.Group.UPKEEP) {
                sum += ledger.presentValue(category);
            }
        }
        return sum;
    }

    /** A bus of 330,000 with a grant of 50,000 that depreciates over 12 years from year 2 on, and two years of it fall in the study. */
    @Test
    void onlyOwnMoneyDepreciates() {
        OperatingAid depreciation = new OperatingAid("Aid", 0, 20, 0, 0.4, 12, 0);
        FundingInput funding = new FundingInput(List.of(fund().built()), List.of(), List.of(), List.of(depreciation),
                FundingInput.Declared.NOTHING);
        CostLedger ledger = evaluated(CONSTANT, funding, steps(electric(2, 1, 0))).plans().get(1).ledger();
        double own = 330_000 * Math.pow(0.99, 2) * Math.pow(1.025, 2) - AWARD;
        assertEquals(0, ledger.amount(1, 1, CostCategory.OPERATING_AID), 0);
        assertEquals(-0.4 * own / 12 / Math.pow(1.025, 3), ledger.amount(1, 2, CostCategory.OPERATING_AID), CENT);
        assertEquals(-0.4 * own / 12 / Math.pow(1.025, 4), ledger.amount(1, 3, CostCategory.OPERATING_AID), CENT);
    }

    @Test
    void creditsAreEarnedOnTheEnergyChargedInTheirYearsAndLowerTheCostThatAidCounts() {
        PlanResult with = evaluated(CONSTANT, everything(fund().built()), steps(electric(1, 1, 0))).plans().get(1);
        PlanResult without = evaluated(CONSTANT, new FundingInput(List.of(fund().built()), List.of(), List.of(), List.of(AID),
                FundingInput.Declared.NOTHING), steps(electric(1, 1, 0))).plans().get(1);
        for (int year = 0; year < TinyDistrict.YEARS; year++) {
            double kwh = year == 0 ? 0 : with.yards().get(year).busKwh().get(0) - with.yards().get(year).missingKwh().get(0);
            double credit = year < 1 || year > 2 ? 0 : kwh * 0.06 * Math.pow(0.97, year + 1);
            assertEquals(-credit, with.ledger().amount(1, year, CostCategory.CREDIT_REVENUE), CENT);
            if (year + 1 < TinyDistrict.YEARS) {
                assertEquals(0.55 * credit / 1.025, with.ledger().amount(1, year + 1, CostCategory.OPERATING_AID)
                        - without.ledger().amount(1, year + 1, CostCategory.OPERATING_AID), CENT);
            }
        }
    }

    @Test
    void realAndNominalStudiesAgree() {
        Programme late = fund().payout(new Payout(3, Optional.empty())).conditions(held(5)).built();
        PlanInput plan = steps(electric(1, 1, 0), electric(2, 0, 0), electric(3, 1));
        double real = evaluated(CONSTANT, everything(late), plan).plans().get(1).measures().presentCost();
        double nominal = evaluated(new MoneyRules(RATES, MoneyBasis.NOMINAL, false), everything(late), plan).plans().get(1).measures()
                .presentCost();
        assertEquals(real, nominal, 1e-9 * Math.abs(real));
    }

    @Test
    void everyCellOfFundingTellsHowItComesAbout() {
        Programme late = fund().payout(new Payout(2, Optional.empty())).conditions(held(5)).built();
        for (MoneyBasis basis : MoneyBasis.values()) {
            PlanResult plan = evaluated(new MoneyRules(RATES, basis, false), everything(late),
                    steps(electric(1, 1, 0), electric(2, 0, 0), electric(3, 1))).plans().get(1);
            for (CostCategory category : CostCategory.values()) {
                for (int year = 0; year < TinyDistrict.YEARS; year++) {
                    for (int row = 0; row < plan.ledger().rows().size(); row++) {
                        assertEquals(plan.ledger().amount(row, year, category), plan.costs().why(row, year, category).value(), 1e-6);
                    }
                }
            }
        }
    }

    @Test
    void linesHoldAllThatThePlanBuys() {
        PlanResult plan = evaluated(CONSTANT, FundingInput.NONE, TinyDistrict.electricPlanWithoutAwards()).plans().get(1);
        double[] nominal = IntStream.range(0, TinyDistrict.YEARS).mapToDouble(y -> plan.funding().awards().lines().stream()
                .filter(l -> l.purchase().year() == y && l.purchase().kind() != Purchase.Kind.PORTS)
                .mapToDouble(l -> l.purchase().cost()).sum()).toArray();
        for (int year = 0; year < TinyDistrict.YEARS; year++) {
            double ledger = plan.ledger().amount(year, CostCategory.BUS_PURCHASE) + plan.ledger().amount(year, CostCategory.SITE_WORKS)
                    + plan.ledger().amount(year, CostCategory.TRAINING_AND_TOOLS);
            assertEquals(ledger * Math.pow(1.025, year), nominal[year], CENT);
        }
    }

    /** Where dearer engine buses leave no difference to pay, the old bus is sold again: more than its costs has changed. */
    @Test
    void aPriceThatEndsScrappingAsksForAWholeEvaluation() {
        Programme half = SampleProgramme.named("P").forBuses(new BusAward(0, 0, 0.5, 1e9)).conditions(Conditions.SCRAP).built();
        StudyResult before = evaluated(CONSTANT, FundingInput.of(List.of(half)), steps(electric(1, 1, 0)));
        assertEquals(Set.of("2"), before.plans().get(1).fleet().scrapped());
        for (double factor : new double[] {1.1, 3}) {
            StudyInput edited = before.input().at(new PriceDeck(before.input().prices().fuels(), before.input().prices().exhaustFluid(),
                    before.input().prices().pack(), Map.of(PriceDeck.Subject.ENGINE_BUS,
                            new PricePath(0, List.of(new PricePath.Point(0, factor))))));
            StudyResult whole = StudyEvaluation.of(edited, before.duty());
            Optional<StudyResult> recosted = StudyRecosting.of(edited, before);
            assertEquals(factor < 2, recosted.isPresent());
            recosted.ifPresent(r -> assertEquals(whole.plans().get(1).measures(), r.plans().get(1).measures()));
        }
    }

    /**
     * Of 100 kWh that a bus needs the yard brings 70, of another's 50 none: credits are earned on 70 kWh, at 0.06 less 3 % a year and
     * with 2.5 % of inflation, at the ends of the years in which they are paid.
     */
    @Test
    void creditsAreEarnedOnWhatIsBroughtAlone() {
        StudyResult result = evaluated(CONSTANT, new FundingInput(List.of(), List.of(), List.of(CREDIT), List.of(), FundingInput.Declared.NOTHING),
                steps(electric(0, 0), electric(0, 1)));
        List<YardYear> yards = result.plans().get(1).yards().stream().map(y -> new YardYear(y.input(), y.months(), List.of(100.0, 50.0),
                List.of(30.0, 50.0), y.bills(), y.withoutCharging())).toList();
        List<FundingFlow> flows = CreditFlows.of(result.input(), yards);
        assertEquals(List.of(1, 2), flows.stream().map(FundingFlow::year).toList());
        assertEquals(70 * 0.06 * Math.pow(0.97 * 1.025, 2), flows.get(0).amount(), 1e-9);
        assertEquals(70 * 0.06 * Math.pow(0.97 * 1.025, 3), flows.get(1).amount(), 1e-9);
        assertEquals(0, flows.get(0).row(), "the place of the bus");
        assertEquals(List.of(), CreditFlows.of(result.input(), yards.subList(0, 1)), "not before its first year");
    }
}
