package org.amberyard.workbench.session;

import java.time.LocalTime;

/**
 * Something that was kept with the study and is no edit, as the history tells of it.
 *
 * @param time when it was kept
 * @param label what it is called
 * @param after number of the edits that it came behind
 */
public record KeptStep(LocalTime time, String label, int after) {

    /** The same where some of the edits before it are gone for good. */
    KeptStep behind(int edits) {
        return after <= edits ? this : new KeptStep(time, label, edits);
    }
}
