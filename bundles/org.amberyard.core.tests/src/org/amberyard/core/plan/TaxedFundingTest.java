package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.finance.Convention;
import org.amberyard.core.finance.Depreciation;
import org.amberyard.core.finance.FinanceLine;
import org.amberyard.core.finance.Macrs;
import org.amberyard.core.finance.PropertyClass;
import org.amberyard.core.finance.TaxRules;
import org.amberyard.core.funding.BusAward;
import org.amberyard.core.funding.Conditions;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.OperatingAid;
import org.amberyard.core.funding.Payout;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.SampleProgramme;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRules;
import org.junit.jupiter.api.Test;

/** Whatever programmes and aids pay, withhold or still owe is taxed once: all tax is the rate times all costs, in money of the year. */
class TaxedFundingTest {
    private static final double RATE = 0.25;
    private static final double CENT = 0.005;
    private static final TaxRules TAXED = new TaxRules(RATE, new Depreciation(new Macrs(PropertyClass.YEARS_5, Convention.HALF_YEAR), 0),
            new Depreciation(new Macrs(PropertyClass.YEARS_15, Convention.HALF_YEAR), 0));

    private static PlanResult evaluated(FundingInput funding, PlanInput plan) {
        StudyInput study = TinyDistrict.withFunding(TinyDistrict.study(new MoneyRules(TinyFinance.RATES, MoneyBasis.NOMINAL, false)), funding);
        FleetRules old = study.rules();
        StudyInput taxed = TinyDistrict.withRules(TinyDistrict.withPlans(study, study.plans().get(0), plan),
                new FleetRules(old.spareCoverShare(), old.insuranceShare(), old.reserveShare(), old.upkeep(), TAXED));
        return TinyDistrict.evaluated(taxed, DutyTable.of(taxed.duty()), 1);
    }

    private static PlanInput steps(PlanInput.Replacement... steps) {
        return new PlanInput("Steps", List.of(steps), List.of(), List.of(), List.of());
    }

    private static PlanInput.Replacement electric(int year, int place, Integer... programmes) {
        return new PlanInput.Replacement(year, place, OptionalInt.of(TinyDistrict.ELECTRIC), OptionalInt.empty(), List.of(programmes));
    }

    private static void assertTaxedOnce(PlanResult plan, String what) {
        double taxes = TinyFinance.sum(year -> plan.finance().ledger().amount(year, FinanceLine::tax));
        double costs = TinyFinance.sum(year -> plan.ledger().yearTotal(year));
        assertEquals(-RATE * costs, taxes, CENT, what);
    }

    @Test
    void operatingAidWithAndWithoutALag() {
        for (int lag = 0; lag < 3; lag++) {
            FundingInput aid =
                    new FundingInput(List.of(), List.of(), List.of(), List.of(new OperatingAid("Aid", 0, 3, 0.5, 0, 10, lag)), FundingInput.Declared.NOTHING);
            assertTaxedOnce(evaluated(aid, steps()), "lag " + lag);
        }
    }

    @Test
    void awardsThatAreWithheldBecauseTheBusLeaves() {
        for (int lag = 0; lag < 3; lag++) {
            Programme held = SampleProgramme.named("Fund").forBuses(new BusAward(50_000, 0, 0, 50_000)).payout(new Payout(lag, Optional.empty()))
                    .conditions(new Conditions(false, false, false, false, false, OptionalInt.empty(), false, 5)).built();
            PlanResult plan = evaluated(FundingInput.of(List.of(held)), steps(electric(1, 1, 0), electric(2, 1)));
            assertEquals(lag > 0, !plan.funding().withheld().isEmpty());
            assertTrue(lag > 0 || !plan.funding().repayments().isEmpty());
            assertEquals(40_000, plan.funding().takenBack(plan.funding().awards().lines().stream().filter(l -> l.funded() > 0).findFirst().orElseThrow()),
                    CENT);
            assertTaxedOnce(plan, "lag " + lag);
        }
    }
}
