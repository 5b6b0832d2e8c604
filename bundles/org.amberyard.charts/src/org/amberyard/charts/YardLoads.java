package org.amberyard.charts;

import java.util.List;
import org.amberyard.core.yard.MonthLoad;
import org.amberyard.core.yard.YardInput;
import org.amberyard.core.yard.YardPlanner;

/**
 * Loads by step of the year of a yard that was asked for last: results do not keep them, and charts of one year ask for them
 * again and again. Safe for use from several threads; what it gives depends on the yard alone.
 */
public final class YardLoads {
    private YardInput known;
    private List<MonthLoad> months = List.of();

    /** Loads from January to December. Yards are told apart by identity, since comparing them whole takes long. */
    public synchronized List<MonthLoad> of(YardInput yard) {
        if (known != yard) {
            months = new YardPlanner(yard).year();
            known = yard;
        }
        return months;
    }
}
