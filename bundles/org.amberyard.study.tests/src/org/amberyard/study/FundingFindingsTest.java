package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.model.funding.CreditUse;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The first eight years of the example's staged plan, which buys seven electric buses with the Clean Fleet Fund. */
class FundingFindingsTest {
    /** Keeps what the tests share: none of them changes how buses drive. */
    private static final StudyEvaluator EVALUATOR = new StudyEvaluator();

    private Study study;
    private Plan staged;
    private Programme fund;

    @BeforeEach
    void load() throws Exception {
        study = ExampleStudy.load();
        study.getSettings().setHorizonYears(8);
        study.getPlans().remove(2);
        staged = study.getPlans().get(1);
        fund = study.getProgrammes().get(0);
    }

    private List<Finding> findings() {
        return new FundingFindings(study, EVALUATOR.evaluate(StudyCompiler.compile(study)), 1).list();
    }

    private Replacement step(String bus) {
        return staged.getReplacements().stream().filter(r -> r.getBus().getName().equals(bus)).findFirst().orElseThrow();
    }

    @Test
    void theExampleIsFundedAsItSays() {
        assertEquals(List.of(), findings());
    }

    @Test
    void aBusThatFailsAConditionIsNamedAtItsStep() {
        fund.setOldDiesel(true);
        List<Finding> found = findings();
        assertEquals(1, found.size(), found.toString());
        assertEquals(Severity.WARNING, found.get(0).severity());
        assertSame(step("B16"), found.get(0).element());
        assertSame(PlansPackage.Literals.REPLACEMENT__PROGRAMMES, found.get(0).feature());
        assertTrue(found.get(0).message().matches("Plan “Electric in stages”: Clean Fleet Fund pays nothing of the USD [\\d,]+ that "
                + "its rule comes to for B16-2, Electric A 118 in 2028: old bus B16 has no diesel engine\\."), found.toString());
    }

    @Test
    void engineModelYearIsThatOfTheBusList() {
        fund.setLatestEngineYear(2009);
        assertTrue(findings().get(0).message().contains("the engine of old bus B05 is of model year 2010, newer than 2009"),
                findings().toString());
    }

    @Test
    void overFundingNamesTheLine() {
        Programme rebate = study.getProgrammes().get(1);
        rebate.getExcludes().clear();
        fund.getExcludes().clear();
        fund.setMatchShare(0);
        step("B01").getProgrammes().add(rebate);
        List<Finding> found = findings();
        assertEquals(0, found.size(), found.toString());
        fund.getBusAwards().forEach(a -> a.setPriceShare(1));
        assertTrue(findings().get(0).message().matches("Plan “Electric in stages”: National Fleet Rebate pays only USD [\\d,]+ of the "
                + "USD 215,000 that its rule comes to for B01-2, Electric C 150 in 2027: what the programmes before it leave of the "
                + "cost\\."), findings().toString());
    }

    @Test
    void deliveryDatesCanExcludeABus() {
        fund.setLastDate("2027-12-31");
        List<Finding> found = findings();
        assertEquals(3, found.size(), found.toString());
        assertTrue(found.get(0).message().endsWith("in 2028: it pays for purchases of other years."), found.toString());
    }

    @Test
    void moneyThatIsNotCertainIsTold() {
        fund.setProbability(0.4);
        assertEquals(List.of(Severity.INFO), findings().stream().map(Finding::severity).toList());
        assertTrue(findings().get(0).message().matches("Plan “Electric in stages” counts on USD [\\d,]+ of Clean Fleet Fund, whose "
                + "award has a probability of 40 %\\."), findings().toString());
        staged.setCertainAwardsOnly(true);
        assertEquals(List.of(), findings());
    }

    @Test
    void whatIsPaidBackOrNeverUsedIsTold() {
        fund.setHoldYears(12);
        Replacement early = PlansFactory.eINSTANCE.createReplacement();
        early.setBus(step("B01").getBus());
        early.setNewType(step("B10").getNewType());
        early.setYear(2033);
        staged.getReplacements().add(early);
        assertTrue(findings().get(0).message().matches("Plan “Electric in stages”: B01-2, Electric C 150 leaves in 2033 after 6 of "
                + "the 12 years that Clean Fleet Fund asks for, so USD [\\d,]+ is paid back\\."), findings().toString());
        staged.getReplacements().remove(early);
        fund.setCreditUse(CreditUse.AGAINST_TAX);
        fund.setTaxPerYear(300_000);
        assertTrue(findings().stream().allMatch(f -> f.message().endsWith("the tax that it can be set against.")), findings().toString());
    }
}
