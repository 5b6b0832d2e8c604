package org.amberyard.core.plan;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DayCharging;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.RouteUse;

/**
 * What electric types charge on the design days of the routes. A plan asks the same of every year in which a type stays on a
 * route, so each answer is worked out once.
 */
final class ChargingDays {
    private final StudyInput study;
    private final DutyTable duty;
    private final Map<Key, List<DayCharging>> known = new HashMap<>();

    ChargingDays(StudyInput study, DutyTable duty) {
        this.study = study;
        this.duty = duty;
    }

    private record Key(int route, int type, double batteryKw) {
    }

    /** The heaviest day of a month at one end of the thermometer; nothing charged where the route is not driven. */
    DayCharging of(int route, int type, double batteryKw, int month, boolean cold) {
        return known.computeIfAbsent(new Key(route, type, batteryKw), this::days).get(2 * month + (cold ? 0 : 1));
    }

    private List<DayCharging> days(Key key) {
        BlockCheck check = RouteFitting.check(study, key.batteryKw(), study.middayCharging());
        BatterySpec battery = study.types().get(key.type()).electric().orElseThrow().battery();
        return IntStream.range(0, 2 * Climate.MONTHS).mapToObj(i -> duty.use(key.route(), key.type())
                .map(use -> heaviest(use, check, battery, i / 2, i % 2 == 0)).orElse(DayCharging.NONE)).toList();
    }

    private static DayCharging heaviest(RouteUse use, BlockCheck check, BatterySpec battery, int month, boolean cold) {
        return use.days(month, cold, check.midday()).map(day -> check.charging(day, battery))
                .max(Comparator.comparingDouble(DayCharging::nightKwh)).orElse(DayCharging.NONE);
    }
}
