package org.amberyard.study;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.plan.StudyEvaluation;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyRecosting;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.TripDrives;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.yard.YardMemory;

/**
 * Evaluates studies and keeps what the last one found: its results, the days of trips driven on its duty table and the years of
 * its yards. So an edit of a price costs anew and does nothing else, and one of a plan does not drive the buses again nor charge
 * a yard that stays as it is. Safe for use from several threads; the result depends on the input alone, never on what was kept.
 */
public final class StudyEvaluator {
    /** Driving the buses, and all that follows from it. */
    private static final int PARTS = 2;

    private final AtomicReference<TripDrives> kept = new AtomicReference<>();
    private final AtomicReference<YardMemory> yards = new AtomicReference<>(new YardMemory());
    private final AtomicReference<StudyResult> last = new AtomicReference<>();

    /** Results of a study. */
    public StudyResult evaluate(StudyInput input) {
        return evaluate(input, Progress.NONE);
    }

    /**
     * Results of a study. One that is stopped leaves what was known before it.
     *
     * @param progress hears how far it is
     * @throws CancellationException when the progress throws it
     */
    public StudyResult evaluate(StudyInput input, Progress progress) {
        StudyResult result = Optional.ofNullable(last.get()).flatMap(before -> StudyRecosting.of(input, before))
                .orElseGet(() -> whole(input, progress));
        last.set(result);
        return result;
    }

    private StudyResult whole(StudyInput input, Progress progress) {
        YardMemory memory = yards.get().next();
        StudyResult result = StudyEvaluation.of(input, drives(input.duty(), progress.part(0, PARTS)), memory, progress.part(1, PARTS));
        yards.set(memory);
        return result;
    }

    private TripDrives drives(DutyInput input, Progress progress) {
        TripDrives driven = kept.get();
        if (driven != null && driven.duty().input().equals(input)) {
            return driven;
        }
        TripDrives drives = new TripDrives(DutyTable.of(input, progress));
        kept.set(drives);
        return drives;
    }
}
