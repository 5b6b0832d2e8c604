package org.amberyard.study;

import java.util.concurrent.atomic.AtomicReference;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.plan.StudyEvaluation;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;

/**
 * Evaluates studies and keeps the last duty table, so that an edit of a price or a plan does not drive the buses again.
 * Safe for use from several threads; the result depends on the input alone, never on what was kept.
 */
public final class StudyEvaluator {
    private final AtomicReference<DutyTable> kept = new AtomicReference<>();

    /** Results of a study. */
    public StudyResult evaluate(StudyInput input) {
        return StudyEvaluation.of(input, duty(input.duty()));
    }

    private DutyTable duty(DutyInput input) {
        DutyTable last = kept.get();
        if (last != null && last.input().equals(input)) {
            return last;
        }
        DutyTable table = DutyTable.of(input);
        kept.set(table);
        return table;
    }
}
