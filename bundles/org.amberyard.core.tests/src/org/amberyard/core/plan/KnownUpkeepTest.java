package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.yard.YardMemory;
import org.junit.jupiter.api.Test;

class KnownUpkeepTest {
    private static final int ELECTRIC = 1;

    private final StudyInput study = TinyDistrict.study();
    private final DutyTable duty = DutyTable.of(study.duty());
    private final KnownUpkeep known = new KnownUpkeep();

    private StudyResult evaluated() {
        return StudyEvaluation.of(study, duty);
    }

    @Test
    void theUpkeepOfAFleetIsFoundOnce() {
        StudyResult result = evaluated();
        FleetHistory electric = result.plans().get(ELECTRIC).fleet();
        List<UpkeepYear> found = known.of(study, electric, result.figures());
        assertEquals(FleetUpkeep.of(study, electric, result.figures()), found);
        assertSame(found, known.of(study, evaluated().plans().get(ELECTRIC).fleet(), result.figures()), "a fleet that drives alike");
        List<UpkeepYear> baseline = known.of(study, result.baseline().fleet(), result.figures());
        assertNotSame(found, baseline);
        assertEquals(FleetUpkeep.of(study, result.baseline().fleet(), result.figures()), baseline);
    }

    /** Upkeep that is remembered is at base-date prices; what it costs at another price and rate is what the whole evaluation says. */
    @Test
    void everyPriceGivesTheCostOfTheWholeEvaluation() {
        StudyResult result = evaluated();
        YardMemory yards = new YardMemory();
        Set<Double> costs = new HashSet<>();
        for (PriceLever lever : PriceLever.of(study)) {
            for (double value : new double[] {lever.from(), (lever.from() + lever.to()) / 2, lever.to()}) {
                StudyInput edited = lever.set().apply(study, value);
                StudyFigures figures = result.figures().anew(edited, duty);
                double cost = PlanEvaluation.presentCost(edited, edited.plans().get(ELECTRIC), duty, figures, yards, known);
                assertEquals(StudyEvaluation.of(edited, duty).plans().get(ELECTRIC).measures().presentCost(), cost, 0, lever.name() + " " + value);
                costs.add(cost);
            }
        }
        assertTrue(costs.size() > 15, costs.size() + " different costs");
    }

    /** Another price of upkeep leaves the remembered amounts as they are, and multiplies what they cost. */
    @Test
    void aPriceOfUpkeepMultipliesWhatIsRemembered() {
        StudyResult result = evaluated();
        PriceLever upkeep = PriceLever.of(study).stream().filter(l -> l.name().equals("upkeep")).findFirst().orElseThrow();
        FleetHistory fleet = result.plans().get(ELECTRIC).fleet();
        StudyInput twice = upkeep.set().apply(study, 2.0);
        assertSame(known.of(study, fleet, result.figures()), known.of(twice, fleet, result.figures().anew(twice, duty)));
        double once = cost(study) - cost(upkeep.set().apply(study, 1.0));
        assertEquals(0, once, 0);
        double atThree = cost(upkeep.set().apply(study, 3.0)) - cost(study);
        assertEquals(2 * (cost(twice) - cost(study)), atThree, 1e-6, "a straight line");
        assertTrue(atThree > 0);
    }

    private double cost(StudyInput edited) {
        return PlanEvaluation.presentCost(edited, edited.plans().get(ELECTRIC), duty, evaluated().figures().anew(edited, duty),
                new YardMemory(), known);
    }

    @Test
    void ratesOfMoneyLeaveTheAmountsOfUpkeep() {
        StudyResult result = evaluated();
        FleetHistory fleet = result.baseline().fleet();
        List<UpkeepYear> found = known.of(study, fleet, result.figures());
        StudyInput dearer = study.at(study.money().at(new MoneyRates(0.09, 0.025)));
        assertSame(found, known.of(dearer, fleet, result.figures().anew(dearer, duty)));
        assertEquals(FleetUpkeep.of(dearer, fleet, result.figures().anew(dearer, duty)), found);
    }

    /** Of more fleets than are kept, the one that was asked for longest ago is found anew; what is asked for again stays. */
    @Test
    void theFleetAskedForLongestAgoIsForgottenFirst() {
        StudyResult result = evaluated();
        List<FleetHistory> fleets = IntStream.range(0, 9).mapToObj(n -> first(result.baseline().fleet(), n + 1)).toList();
        List<UpkeepYear> kept = known.of(study, fleets.get(0), result.figures());
        List<UpkeepYear> second = known.of(study, fleets.get(1), result.figures());
        fleets.subList(2, 8).forEach(f -> known.of(study, f, result.figures()));
        assertSame(kept, known.of(study, fleets.get(0), result.figures()));
        known.of(study, fleets.get(8), result.figures());
        assertSame(kept, known.of(study, fleets.get(0), result.figures()));
        assertNotSame(second, known.of(study, fleets.get(1), result.figures()));
    }

    private static FleetHistory first(FleetHistory fleet, int years) {
        return new FleetHistory(fleet.years().subList(0, years), fleet.events(), fleet.fleetAtEnd(), fleet.decisions());
    }
}
