package org.amberyard.core.charging;

import java.util.List;

/**
 * Charging of a stretch at the ports of a yard: who stands where, and what is drawn when.
 *
 * <p>Every bus has a plug of its own while there are enough. Where that leaves a bus short, or there are too few, the buses
 * queue with as few swaps as will do, and where that leaves one short, with each ready as soon as can be. The first of the three
 * that has all buses ready is taken, else the one that leaves the least energy missing. A queue is not tried where each bus has
 * a port to itself, and no other has more power for it.
 *
 * @param stretch the stretch
 * @param units ports
 * @param rule policy by which the buses come to the plugs
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
        YardCharging best = DedicatedPlugs.of(stretch, units).map(a -> of(run, a)).orElse(null);
        if (best != null && (best.served() || best.atFullPower())) {
            return best;
        }
        for (int attempt = 0; attempt < 2 && (best == null || !best.served()); attempt++) {
            YardCharging queue = of(run, ChargeQueue.of(stretch, units, rule, attempt == 0));
            best = best == null || queue.schedule.shortKwh() < best.schedule.shortKwh() ? queue : best;
        }
        return best;
    }

    /** Charging of a stretch that comes again and again: what may wait between runs is taken in the night. */
    public static YardCharging waiting(YardStretch stretch, List<PortUnit> units, ChargeRule rule) {
        YardCharging first = of(stretch, units, rule);
        return rule.managed() || first.served() ? first
                : of(stretch.with(new SpareCharge(stretch.plugIns()).waiting(first.schedule)), units, rule);
    }

    private static YardCharging of(PolicyRun run, PortAssignment assignment) {
        return new YardCharging(run.stretch(), run.units(), run.rule(), assignment, run.of(assignment));
    }

    /** True when no queue brings more into a bus: each has a port to itself through all its stay, and none gives it more power. */
    private boolean atFullPower() {
        for (PortUnit unit : units) {
            if (unit.plugs() > 1) {
                return false;
            }
            for (Plugged one : assignment.plugged()) {
                BusAcceptance bus = one.plugIn().acceptance();
                if (bus.batteryKw(unit.port()) > bus.batteryKw(units.get(one.unit()).port())) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The same buses at the same plugs, charged there by another policy. */
    YardCharging by(ChargeRule other) {
        return new YardCharging(stretch, units, rule, assignment, new PolicyRun(stretch, units, other).of(assignment));
    }

    /** True when every bus leaves with the charge that it needs. */
    public boolean served() {
        return schedule.shortfalls().isEmpty();
    }
}
