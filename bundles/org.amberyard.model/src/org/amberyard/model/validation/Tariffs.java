package org.amberyard.model.validation;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.study.Study;

/** Tariffs by hours of a study: the one in use and those to compare it with. */
final class Tariffs {
    private Tariffs() {
    }

    static List<ScheduledTariff> byHours(Study study) {
        Depot depot = study.getDepot();
        return depot == null ? List.of()
                : Stream.concat(Stream.ofNullable(depot.getTariff()), depot.getAlternativeTariffs().stream())
                        .filter(ScheduledTariff.class::isInstance).map(ScheduledTariff.class::cast).toList();
    }
}
