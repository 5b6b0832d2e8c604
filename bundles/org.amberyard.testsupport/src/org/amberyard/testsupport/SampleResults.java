package org.amberyard.testsupport;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.plan.StudyEvaluation;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;

/**
 * Results of studies. They cannot be changed and depend on the study alone, so that all tests of a run may share them; studies
 * on the same routes share the drives too.
 */
final class SampleResults {
    private static final Map<DutyInput, DutyTable> DUTIES = new ConcurrentHashMap<>();
    private static final Map<StudyInput, StudyResult> RESULTS = new ConcurrentHashMap<>();

    private SampleResults() {
    }

    static StudyResult of(StudyInput study) {
        return RESULTS.computeIfAbsent(study, s -> StudyEvaluation.of(s, DUTIES.computeIfAbsent(s.duty(), DutyTable::of)));
    }

    static StudyResult afresh(StudyInput study) {
        return StudyEvaluation.of(study, DutyTable.of(study.duty()));
    }
}
