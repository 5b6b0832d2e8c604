package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.duty.DutyTable;
import org.junit.jupiter.api.Test;

class RouteAnswerTest {
    private final StudyInput study = TinyDistrict.study();
    private final DutyTable duty = DutyTable.of(study.duty());

    @Test
    void thePlanDecidesTheTypeAndItsFitTheAnswer() {
        StudyResult result = StudyEvaluation.of(study, duty);
        List<RouteAnswer> electric = RouteAnswer.of(result, 1);
        assertEquals(2, electric.size());
        for (RouteAnswer answer : electric) {
            assertTrue(answer.electric());
            RouteFit fit = result.plans().get(1).fits().of(answer.route(), TinyDistrict.ELECTRIC).orElseThrow();
            assertEquals(fit, answer.fit().orElseThrow());
            assertEquals(fit.newMidday().passes(), answer.passesNew(true));
            assertEquals(fit.agedOvernight().passes(), answer.passesAged(false));
        }
    }

    @Test
    void whereAnEngineStaysTheBestElectricTypeStandsIn() {
        RouteAnswer answer = RouteAnswer.of(StudyEvaluation.of(study, duty), 0).get(0);
        assertFalse(answer.electric());
        assertEquals(TinyDistrict.ELECTRIC, answer.fit().orElseThrow().type());
    }

    @Test
    void aRouteWithAnElectricAndAnEngineBusIsElectric() {
        List<BusInput> buses = new ArrayList<>(study.buses());
        buses.add(new BusInput("4", Role.ROUTE, TinyDistrict.DIESEL, OptionalInt.of(0), -2, 0, 0, 0, OptionalDouble.empty(),
                OptionalInt.empty()));
        StudyResult result = StudyEvaluation.of(TinyDistrict.withBuses(study, buses), duty);
        assertTrue(RouteAnswer.of(result, 1).get(0).electric());
    }
}
