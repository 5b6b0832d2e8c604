package org.amberyard.model.meta;

import java.util.EnumSet;
import java.util.Set;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.TariffCharge;

/** Season of a row of a tariff. */
public final class Season {
    private Season() {
    }

    /** Its months; a season may run over the end of the year. */
    public static Set<Month> of(TariffCharge row) {
        int months = Month.VALUES.size();
        int count = Math.floorMod(row.getLastMonth().getValue() - row.getFirstMonth().getValue(), months) + 1;
        Set<Month> season = EnumSet.noneOf(Month.class);
        for (int i = 0; i < count; i++) {
            season.add(Month.get((row.getFirstMonth().getValue() + i) % months));
        }
        return season;
    }
}
