package org.amberyard.study;

import java.util.concurrent.atomic.AtomicReference;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.plan.StudyEvaluation;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.TripDrives;
import org.amberyard.core.yard.YardMemory;

/**
 * Evaluates studies and keeps the last duty table with the days of trips driven on it and the years of yards, so that an edit
 * of a price or a plan does not drive the buses again nor charge a yard that stays as it is. Safe for use from several threads; the result depends on the input alone, never on what was
 * kept.
 */
public final class StudyEvaluator {
    private final AtomicReference<TripDrives> kept = new AtomicReference<>();
    private final AtomicReference<YardMemory> yards = new AtomicReference<>(new YardMemory());

    /** Results of a study. */
    public StudyResult evaluate(StudyInput input) {
        return StudyEvaluation.of(input, drives(input.duty()), yards.updateAndGet(YardMemory::next));
    }

    private TripDrives drives(DutyInput input) {
        TripDrives last = kept.get();
        if (last != null && last.duty().input().equals(input)) {
            return last;
        }
        TripDrives drives = new TripDrives(DutyTable.of(input));
        kept.set(drives);
        return drives;
    }
}
