package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.amberyard.study.roll.RollChoice;
import org.amberyard.study.roll.YearRoll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class YearRollTest {
    /** Years before the end in which no pack is due whose replacement hangs on the years left. */
    private static final int LAST_NOT_DECIDED_BY_THE_END = 12;

    /** A plan that goes on as it was planned does and costs the same in each year that is left. */
    @ParameterizedTest
    @CsvSource({"2027, true, 1", "2028, true, 1", "2031, true, 1", "2031, false, 1", "2030, true, 0", "2030, true, 2"})
    void laterYearsOfTheExampleAreTheSame(int toYear, boolean sameEnd, int plan) throws StudyFileException {
        Study study = ExampleStudy.load();
        YearRoll roll = rolled(study, toYear, sameEnd, plan);
        StudyResult now = ExampleStudy.evaluated(roll.study());
        PlanResult before = roll.before().plans().get(plan);
        SameYears same = new SameYears(before, now.plans().get(plan), toYear - 2026, moved(before, toYear - 2026));
        List<String> differences = same.differences(sameEnd ? 15 : LAST_NOT_DECIDED_BY_THE_END);
        assertEquals(List.of(), differences.size() > 12 ? differences.subList(0, 12) : differences);
        assertTrue(same.compared() > 1000, "only " + same.compared() + " figures");
    }

    private static Set<Integer> moved(PlanResult plan, int years) {
        return plan.fleet().events().stream().filter(e -> e instanceof FleetEvent.Moved && e.year() <= years).map(FleetEvent::place)
                .collect(Collectors.toSet());
    }

    private static YearRoll rolled(Study study, int toYear, boolean sameEnd, int plan) {
        Plan carriedOut = study.getPlans().get(plan);
        return YearRoll.of(study, new RollChoice(toYear, carriedOut, sameEnd, Set.of()), input -> new StudyEvaluator().evaluate(input));
    }
}
