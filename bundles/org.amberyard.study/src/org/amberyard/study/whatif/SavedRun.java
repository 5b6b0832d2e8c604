package org.amberyard.study.whatif;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.amberyard.model.study.Study;

/**
 * What a what-if has found, to be opened again without computing it anew.
 *
 * @param fingerprint {@link StudyFingerprint} of the study that it was run on
 * @param parts results by part: by result and variant; not to be changed
 * @param study the study that it was run on, not to be changed; empty where it was not kept
 */
public record SavedRun(String fingerprint, Map<RunPart, double[][]> parts, Optional<Study> study) {

    public SavedRun {
        parts = new EnumMap<>(parts);
    }

    /** True when it was run on a study as that is now, by the method as it is now. */
    public boolean isOf(Study now) {
        return fingerprint.equals(StudyFingerprint.of(now));
    }

    /**
     * The parts that are of a study as it is now: all when it was run on it; all but the grid of two inputs when the study chooses
     * another grid and is otherwise the same. Empty where it is of another study, or that cannot be told.
     */
    Optional<Map<RunPart, double[][]>> of(Study now) {
        if (isOf(now)) {
            return Optional.of(parts);
        }
        boolean otherGrid = study.filter(this::isOf).filter(then -> StudyFingerprint.withoutGrid(then).equals(StudyFingerprint.withoutGrid(now)))
                .isPresent();
        Map<RunPart, double[][]> others = new EnumMap<>(parts);
        others.remove(RunPart.GRID);
        return otherGrid ? Optional.of(others) : Optional.empty();
    }
}
