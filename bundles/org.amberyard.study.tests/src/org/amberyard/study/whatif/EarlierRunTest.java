package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.study.Study;
import org.amberyard.study.InputDifferences.Difference;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A kept run of the example, whose price of diesel has been edited since. */
class EarlierRunTest {
    private static final int PLAN = 1;

    private static Study study;
    private static WhatIfRun run;
    private static SavedRun saved;
    private static Study now;

    @BeforeAll
    static void keepAndEdit() throws StudyFileException {
        study = ExampleWhatIf.without(100);
        ExampleWhatIf.add(study, "Diesel price", "FuelPrice", "diesel", "pricePerL");
        run = new WhatIfRun(study, new StudyEvaluator().evaluate(StudyCompiler.compile(study)), 2, Optional.empty());
        run.run(Progress.NONE, soFar -> {});
        saved = run.saved();
        now = EcoreUtil.copy(study);
        FuelPrice diesel = now.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast)
                .filter(p -> p.getPricePerL() > 0).findFirst().orElseThrow();
        diesel.setPricePerL(diesel.getPricePerL() * 2);
    }

    @Test
    void itTellsWhatItFoundOfTheStudyAsItWas() {
        assertTrue(saved.isOf(study));
        assertFalse(saved.isOf(now));
        WhatIfResults told = EarlierRun.results(saved, EarlierRun.study(saved).orElseThrow());
        assertArrayEquals(run.results().all().orElseThrow().presentCosts(PLAN), told.all().orElseThrow().presentCosts(PLAN), 0);
        assertEquals(run.results().single().orElseThrow().saving(PLAN, 0), told.single().orElseThrow().saving(PLAN, 0));
    }

    @Test
    void theEditIsAllThatHasChanged() {
        List<Difference> changes = EarlierRun.changes(EarlierRun.study(saved).orElseThrow(), now);
        assertEquals(1, changes.size(), changes.toString());
        assertTrue(changes.get(0).element().contains("diesel"), changes.toString());
        assertEquals(List.of(), EarlierRun.changes(EarlierRun.study(saved).orElseThrow(), study));
    }

    /** An edit of the study that was run does not reach what was kept of it. */
    @Test
    void whatIsKeptStaysAsItWas() {
        Study edited = EcoreUtil.copy(study);
        SavedRun kept = new WhatIfRun(edited, run.results().base(), 1, Optional.of(saved)).saved();
        edited.getSettings().setDiscountRate(0.5);
        assertTrue(kept.isOf(kept.study().orElseThrow()));
        assertFalse(kept.isOf(edited));
    }

    @Test
    void aRunByAnotherMethodOrWithoutItsStudyCannotBeTold() {
        SavedRun older = new SavedRun(StudyFingerprint.of(study, "0"), saved.parts(), saved.study());
        assertEquals(Optional.empty(), EarlierRun.study(older));
        assertEquals(Optional.empty(), EarlierRun.study(new SavedRun(saved.fingerprint(), saved.parts(), Optional.empty())));
    }
}
