package org.amberyard.study.whatif;

import java.util.EnumMap;
import java.util.Map;

/**
 * What a what-if has found, to be opened again without computing it anew.
 *
 * @param fingerprint {@link StudyFingerprint} of the study that it was run on
 * @param parts results by part: by result and variant; not to be changed
 */
public record SavedRun(String fingerprint, Map<RunPart, double[][]> parts) {

    public SavedRun {
        parts = new EnumMap<>(parts);
    }
}
