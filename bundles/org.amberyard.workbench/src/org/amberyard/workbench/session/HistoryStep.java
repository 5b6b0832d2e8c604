package org.amberyard.workbench.session;

import java.time.LocalTime;
import java.util.List;

/**
 * An edit as the history tells of it.
 *
 * @param time when it was made
 * @param label its name
 * @param changes what it changed; of very many only the first
 * @param count number of all its changes
 */
public record HistoryStep(LocalTime time, String label, List<Change> changes, int count) {

    public HistoryStep {
        changes = List.copyOf(changes);
    }
}
