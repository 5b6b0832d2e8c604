package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.money.Payback;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleCover;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

class HeadlineTest {
    private static final Payback NEVER = new Payback(Payback.Outcome.NEVER, Double.NaN);
    private static final Payback AT_ONCE = new Payback(Payback.Outcome.AT_ONCE, 0);
    private static final Payback AFTER = new Payback(Payback.Outcome.AFTER, 9.34);

    private final StudyResult small = SampleDistrict.evaluated(SampleDistrict.small());

    private String cost(double saving, Payback payback, double co2eKg) {
        return new CostSentence(small).compared(new Comparison(1, saving, payback, payback, co2eKg));
    }

    @Test
    void aPlanThatCostsLessAndPaysBack() {
        assertEquals("“Electric in stages” costs USD 1.23 million less than “Like-for-like diesel” over 10 years "
                + "(present value), pays back after 9.3 years (in 2035), and saves 1,234 t CO2e.", cost(1_234_000, AFTER, 1_234_400));
    }

    @Test
    void aPlanThatIsNeverBehind() {
        assertTrue(cost(5_000, AT_ONCE, 0).endsWith("(present value), pays back at once, and emits as much CO2e."));
    }

    @Test
    void aPlanThatCostsMoreAndNeverPaysBack() {
        assertEquals("“Electric in stages” costs USD 45,600 more than “Like-for-like diesel” over 10 years (present value), "
                + "does not pay back by the end of 2035, and emits 3 t CO2e more.", cost(-45_612, NEVER, -3_000));
    }

    @Test
    void aPlanThatCostsTheSame() {
        assertTrue(cost(0.2, AT_ONCE, 0).contains("costs the same as “Like-for-like diesel” over 10 years"));
    }

    @Test
    void aPlanThatMakesNoDifference() {
        Payback none = new Payback(Payback.Outcome.NO_DIFFERENCE, Double.NaN);
        assertTrue(cost(0, none, 0).endsWith(", makes no difference in any year, and emits as much CO2e."));
    }

    @Test
    void whereInterestOrWhatIsLeftTurnsTheAnswerRoundItIsSaid() {
        assertTrue(cost(5_000, NEVER, 0).contains("does not pay back by the end of 2035 unless what is left at the end counts"));
        assertTrue(cost(-5_000, AFTER, 0)
                .contains("pays back after 9.3 years (in 2035) only when neither interest nor what is left at the end counts"));
    }

    /** No bus of the district with trips drives its third route. */
    @Test
    void whatSpoilsTheAnswerComesFirst() {
        Headline headline = Headline.of(SampleDistrict.evaluated(SampleCover.study()), UnitSystem.US).get(0);
        assertTrue(headline.routes().startsWith("Without a bus: R03 from 2026; the plan costs less than what is to be driven. Of 3 routes, "),
                headline.routes());
    }

    @Test
    void aBaselineAloneHasNothingToCompareWith() {
        StudyResult alone = SampleDistrict.evaluated(SampleDistrict.baselineOnly());
        List<Headline> headlines = Headline.of(alone, UnitSystem.US);
        assertEquals(1, headlines.size());
        assertTrue(headlines.get(0).cost().endsWith("; there is no other plan to compare it with."));
        assertEquals("None of the 3 routes goes electric in this plan; 2 of them could be served by an electric bus listed "
                + "on the worst operated day.", headlines.get(0).routes());
        assertEquals("The plan installs no charging ports.", headlines.get(0).service());
    }

    @Test
    void routesThatAllPass() {
        assertEquals("Of 3 routes, 2 go electric in this plan. Charged overnight and between runs, all of them manage the "
                + "worst operated day, with a new pack and with an aged one; "
                + "1 of the others cannot be served by any electric bus listed.",
                Headline.of(small, UnitSystem.US).get(0).routes());
    }

    @Test
    void routesOfWhichSomeFail() {
        StudyResult large = SampleDistrict.evaluated(SampleDistrict.large());
        assertEquals("Of 18 routes, 11 go electric in this plan. Charged overnight and between runs, only 9 of them manage the "
                + "worst operated day with a new pack, and 1 more fails once the pack has aged; "
                + "2 of the others cannot be served by any electric bus listed.",
                Headline.of(large, UnitSystem.US).get(0).routes());
    }

    @Test
    void aStudyWithoutRoutes() {
        StudyInput empty = SampleDistrict.withoutRoutes();
        assertEquals("The study has no routes, so no range is judged.",
                Headline.of(SampleDistrict.evaluated(empty), UnitSystem.US).get(0).routes());
    }

    private static ServiceYear service(int ports, double connectedKva, double demandKva, double breakerKva) {
        return new ServiceYear(ports, connectedKva, demandKva, connectedKva, demandKva, 300, breakerKva);
    }

    @Test
    void theServiceByItsFirstYearOfOverload() {
        ServiceYear fine = service(2, 100, 80, 320);
        ServiceYear connected = service(9, 350, 200, 320);
        ServiceYear both = service(20, 700, 310, 320);
        assertEquals("All ports at full power stay within the 300 kVA transformer in every year.",
                ServiceSentence.of(List.of(fine, fine), 2026, true));
        assertEquals("All ports at full power exceed the 300 kVA transformer from 2027; charging as planned, which "
                + "takes a load-management system, stays within it.",
                ServiceSentence.of(List.of(fine, connected), 2026, true));
        assertEquals("All ports at full power exceed the 300 kVA transformer from 2026; even charging as planned "
                + "exceeds it from 2027.", ServiceSentence.of(List.of(connected, both), 2026, true));
        assertEquals("All ports at full power exceed the 266 kVA that the main breaker carries continuously from 2026; charging "
                + "as planned, which takes a load-management system, stays within it.",
                ServiceSentence.of(List.of(service(9, 280, 200, 266)), 2026, true));
        assertEquals("The plan runs electric buses but installs no charging ports.",
                ServiceSentence.of(List.of(service(0, 60, 60, 266)), 2026, true));
    }
}
