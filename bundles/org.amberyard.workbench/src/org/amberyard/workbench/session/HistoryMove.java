package org.amberyard.workbench.session;

import java.util.List;

/**
 * What has last happened to a study.
 *
 * @param way whether edits were made, taken back or made again
 * @param steps the edits, in the order in which they were made
 */
public record HistoryMove(Way way, List<HistoryStep> steps) {

    /** Ways in which an edit comes into a study or goes out of it. */
    public enum Way {
        /** The user has edited. */
        EDIT,
        /** Edits were taken back. */
        UNDO,
        /** Edits that had been taken back were made again. */
        REDO
    }

    public HistoryMove {
        steps = List.copyOf(steps);
    }
}
