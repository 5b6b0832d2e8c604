package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.tariff.DayClass;

/** The loads of a yard before prices schedule anything: by its policy, or, where prices decide, at full power. */
final class UnscheduledLoads {
    private final YardInput yard;
    private final StretchPlanner stretches;

    /**
     * @param yard the yard
     * @param needs what its buses need
     */
    UnscheduledLoads(YardInput yard, YardNeeds needs) {
        this.yard = yard;
        this.stretches = new StretchPlanner(yard, needs);
    }

    /** The loads of all months, from January to December. */
    List<MonthLoad> year() {
        return IntStream.range(0, Climate.MONTHS).mapToObj(this::month).toList();
    }

    /** The load of a month. */
    MonthLoad month(int month) {
        List<StretchLoad> loads = new ArrayList<>();
        for (ServiceMonth service : yard.calendar().in(month)) {
            for (StretchKind kind : StretchKind.values()) {
                if (service.times().containsKey(kind)) {
                    loads.add(stretches.of(service, kind));
                }
            }
        }
        Map<DayClass, Double> free = yard.calendar().idle().get(month);
        boolean peakDay = loads.stream().noneMatch(s -> s.kind().extreme());
        return new MonthLoad(month, loads, MonthLoad.idle(free, yard.standbyKw(), yard.building(), month, peakDay), OptionalDouble.empty());
    }
}
