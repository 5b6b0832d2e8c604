package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.Test;

/** Evaluations that tell how far they are, are stopped, and come after stopped ones. */
class StudyEvaluatorTest {
    private static Study atOnce() throws StudyFileException {
        Study study = ExampleStudy.load();
        study.getDepot().setChargingPolicy(ChargingPolicy.AT_ONCE);
        return study;
    }

    private static StudyInput dearer(Study study) {
        TariffCharge charge = ((ScheduledTariff) study.getDepot().getTariff()).getCharges().get(0);
        charge.setPricePerKwh(1.01 * charge.getPricePerKwh());
        return StudyCompiler.compile(study);
    }

    private static List<Double> costs(StudyResult result) {
        return result.plans().stream().map(p -> p.costs().ledger().presentValue()).toList();
    }

    private static Progress stopAt(double share) {
        return done -> {
            if (done >= share) {
                throw new CancellationException();
            }
        };
    }

    @Test
    void tellsHowFarItIs() throws StudyFileException {
        List<Double> told = new CopyOnWriteArrayList<>();
        new StudyEvaluator().evaluate(StudyCompiler.compile(atOnce()), told::add);
        assertTrue(told.stream().allMatch(share -> share >= 0 && share <= 1), told::toString);
        assertTrue(told.stream().filter(share -> share > 0 && share < 0.5).count() > 20, "driving the buses is not told step by step");
        assertTrue(told.stream().filter(share -> share > 0.5 && share < 1).count() > 20, "years of plans are not told step by step");
    }

    @Test
    void oneThatIsStoppedLeavesWhatWasKnown() throws StudyFileException {
        Study study = atOnce();
        StudyEvaluator evaluator = new StudyEvaluator();
        StudyResult first = evaluator.evaluate(StudyCompiler.compile(study));
        StudyInput dearer = dearer(study);
        for (double share : new double[] {0.5, 0.7, 0.9}) {
            assertThrows(CancellationException.class, () -> evaluator.evaluate(dearer, stopAt(share)), () -> "stopped at " + share);
        }
        StudyResult again = evaluator.evaluate(dearer);
        assertSame(first.duty(), again.duty());
        assertEquals(costs(new StudyEvaluator().evaluate(dearer)), costs(again));
    }

    @Test
    void theFirstOneCanBeStoppedWhileBusesAreDriven() throws StudyFileException {
        StudyInput input = StudyCompiler.compile(atOnce());
        StudyEvaluator evaluator = new StudyEvaluator();
        List<Double> told = new CopyOnWriteArrayList<>();
        assertThrows(CancellationException.class, () -> evaluator.evaluate(input, share -> {
            told.add(share);
            stopAt(0.1).at(share);
        }));
        assertTrue(told.stream().allMatch(share -> share < 0.2), told::toString);
    }
}
