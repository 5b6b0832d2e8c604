package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.funding.AwardStatus;
import org.amberyard.model.funding.CreditUse;
import org.amberyard.model.funding.FundingFactory;
import org.amberyard.model.funding.LowCarbonCredit;
import org.amberyard.model.funding.OperatingAid;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.OneOffCost;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.prices.PricePoint;
import org.amberyard.model.prices.PricesFactory;
import org.junit.jupiter.api.Test;

class FundingRulesTest {
    private final SmallStudy small = new SmallStudy();

    private Programme addProgramme(String name) {
        Programme programme = FundingFactory.eINSTANCE.createProgramme();
        programme.setName(name);
        programme.setLastYear(2030);
        programme.getBusAwards().add(FundingFactory.eINSTANCE.createBusAward());
        small.study.getProgrammes().add(programme);
        return programme;
    }

    private OperatingAid addAid(String name, double share) {
        OperatingAid aid = FundingFactory.eINSTANCE.createOperatingAid();
        aid.setName(name);
        aid.setLastYear(2030);
        aid.setOperatingShare(share);
        small.study.getOperatingAids().add(aid);
        return aid;
    }

    @Test
    void programmesThatMayNotBeCombinedAreNamedOnTheStep() {
        Programme fund = addProgramme("Fund");
        fund.setProbability(0.5);
        small.replacement.getProgrammes().add(fund);
        Said.of(small);
        fund.getExcludes().add(small.rebate);
        Said.of(small, "WARNING: Replacement 2027 B01 of plan Electric: programmes Rebate and Fund may not be combined, so only "
                + "the one that comes first in their order pays; keep one.");
        fund.getExcludes().add(fund);
        small.replacement.getProgrammes().remove(fund);
        Said.of(small, "ERROR: Programme Fund: it is said not to be combined with itself; name others only.");
    }

    @Test
    void howFarMoneyIsSecuredAgreesWithHowItIsCounted() {
        small.rebate.setStatus(AwardStatus.NOT_SAID);
        Said.of(small, "WARNING: Programme Rebate: its award is counted as certain, but its status is not said; enter how far it is secured, or how probable "
                + "it is.");
        small.replacement.getProgrammes().clear();
        Said.of(small);
        small.replacement.getProgrammes().add(small.rebate);
        small.rebate.setStatus(AwardStatus.APPLIED);
        Said.of(small, "WARNING: Programme Rebate: its status is “applied for”, yet its award is counted as certain; enter how probable it is.");
        small.rebate.setProbability(0.6);
        Said.of(small);
        small.rebate.setStatus(AwardStatus.COMMITTED);
        small.rebate.setLetter("Award of 2026-03-16");
        Said.of(small, "WARNING: Programme Rebate: its status is “committed”, yet its probability of award is 0.6 share; one of the two is not so.");
        small.rebate.setProbability(1);
        Said.of(small);
        small.rebate.setLetter(" ");
        Said.of(small, "INFO: Programme Rebate: it is said to be committed, but no letter or document is named that says so.");
    }

    @Test
    void ownMoneyThatIsAMatchIsToBeCommitted() {
        Plan plan = (Plan) small.replacement.eContainer();
        plan.setOwnStatus(AwardStatus.PLANNED);
        Said.of(small);
        small.rebate.setMatchShare(0.2);
        Said.of(small, "WARNING: Plan Electric: its own money is the match of “Rebate” and only “planned”; applications ask for a letter "
                + "or resolution that commits it.");
        plan.setOwnStatus(AwardStatus.COMMITTED);
        Said.of(small, "INFO: Plan Electric: it is said to be committed, but no letter or document is named that says so.");
        plan.setOwnLetter("Resolution 26-014");
        Said.of(small);
    }

    @Test
    void deliveryDatesAreInOrder() {
        small.rebate.setFirstDate("2026-07-01");
        small.rebate.setLastDate("2027-06-30");
        Said.of(small);
        small.rebate.setLastDate("2026-06-30");
        Said.of(small, "ERROR: Programme Rebate: its first date 2026-07-01 is after its last date 2026-06-30; were they swapped?");
    }

    @Test
    void theAwardIsOnADayOfTheCalendar() {
        small.rebate.setAwardDate("2026-09-15");
        Said.of(small);
        small.rebate.setAwardDate("fall 2026");
        Said.of(small, "ERROR: Programme Rebate: date of the award is “fall 2026”; it must be a day of the calendar as year, "
                + "month and day, such as 2026-07-01.");
    }

    @Test
    void aDateIsADayOfTheCalendar() {
        small.rebate.setFirstDate("1.7.2026");
        Said.of(small, "ERROR: Programme Rebate: delivered from is “1.7.2026”; it must be a day of the calendar as year, "
                + "month and day, such as 2026-07-01.");
    }

    @Test
    void aCreditAgainstNoTaxBringsNothing() {
        small.rebate.setCreditUse(CreditUse.AGAINST_TAX);
        Said.of(small, "WARNING: Programme Rebate: it is set against tax and no tax is owed, so it brings nothing; enter the tax "
                + "or have it paid in cash.");
        small.rebate.setTaxPerYear(50_000);
        Said.of(small);
    }

    @Test
    void trainingIsPaidForByProgrammesThatPayForIt() {
        OneOffCost training = PlansFactory.eINSTANCE.createOneOffCost();
        training.setName("Training");
        training.getProgrammes().add(small.rebate);
        small.plan.getOneOffCosts().add(training);
        Said.of(small, "WARNING: One-off cost Training of plan Electric: programme Rebate pays no share of training, so it pays "
                + "nothing; enter the share or clear the programme.");
        small.rebate.setTrainingShare(0.5);
        Said.of(small);
    }

    @Test
    void aidReimbursesNoMoreThanTheCost() {
        addAid("First", 0.6);
        OperatingAid second = addAid("Second", 0.5);
        Said.of(small, "ERROR: Operating aid First: with the other aids of 2026 it reimburses 1.1 share of the cost; together "
                + "they must not exceed 1 share.",
                "ERROR: Operating aid Second: with the other aids of 2026 it reimburses "
                        + "1.1 share of the cost; together they must not exceed 1 share.");
        second.setFirstYear(2031);
        second.setLastYear(2035);
        Said.of(small);
    }

    @Test
    void yearsOfCreditsAndAidAreInOrder() {
        LowCarbonCredit credit = FundingFactory.eINSTANCE.createLowCarbonCredit();
        credit.setName("Credit");
        credit.setFirstYear(2031);
        credit.setLastYear(2030);
        small.study.getLowCarbonCredits().add(credit);
        addAid("Aid", 0.5).setFirstYear(2031);
        Said.of(small, "ERROR: Low-carbon credit Credit: its first year 2031 is after its last year 2030; were they swapped?",
                "ERROR: Operating aid Aid: its first year 2031 is after its last year 2030; were they swapped?");
    }

    @Test
    void thePriceOfACreditHasOnePointAYear() {
        LowCarbonCredit credit = FundingFactory.eINSTANCE.createLowCarbonCredit();
        credit.setName("Credit");
        for (int i = 0; i < 2; i++) {
            PricePoint point = PricesFactory.eINSTANCE.createPricePoint();
            point.setYear(2030);
            credit.getPoints().add(point);
        }
        small.study.getLowCarbonCredits().add(credit);
        Said.of(small, "ERROR: Price point 2030 of low-carbon credit Credit: the year has a point already; keep one.");
    }
}
