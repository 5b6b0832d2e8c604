package org.amberyard.core.charging;

import java.util.List;
import java.util.Optional;

/**
 * Charging of a stretch at the ports of a yard: who stands where, and what is drawn when.
 *
 * <p>Every bus has a plug of its own while there are enough; where that leaves a bus short, or there are too few, the buses
 * queue. Of the two the one that leaves less energy missing is taken, a plug of one's own when they are equal.
 *
 * @param stretch the stretch
 * @param units ports
 * @param rule policy
 * @param assignment who stands at which plug when
 * @param schedule what is charged; with least cost the charge at full power that shows what can be stored
 */
public record YardCharging(YardStretch stretch, List<PortUnit> units, ChargeRule rule, PortAssignment assignment,
        ChargeSchedule schedule) {

    public YardCharging {
        units = List.copyOf(units);
    }

    /** Charging by a rule. */
    public static YardCharging of(YardStretch stretch, List<PortUnit> units, ChargeRule rule) {
        PolicyRun run = new PolicyRun(stretch, units, rule);
        Optional<PortAssignment> dedicated = DedicatedPlugs.of(stretch, units);
        ChargeSchedule alone = dedicated.map(run::of).orElse(null);
        if (alone != null && alone.shortfalls().isEmpty()) {
            return new YardCharging(stretch, units, rule, dedicated.get(), alone);
        }
        PortAssignment queue = ChargeQueue.of(stretch, units, rule);
        ChargeSchedule queued = run.of(queue);
        if (alone != null && alone.shortKwh() <= queued.shortKwh()) {
            return new YardCharging(stretch, units, rule, dedicated.get(), alone);
        }
        return new YardCharging(stretch, units, rule, queue, queued);
    }

    /** True when every bus leaves with the charge that it needs. */
    public boolean served() {
        return schedule.shortfalls().isEmpty();
    }
}
