package org.amberyard.core.charging;

import java.util.List;

/**
 * A way to have buses plugged in: by a policy, with what its buses ask for. A managed policy that leaves a bus short in
 * its own way takes that of another: who stands at which plug when, and within these stays it charges by its own rule,
 * or, where that leaves more missing, as the other.
 *
 * @param rule policy by which the buses come to the plugs
 * @param stretch the stretch as its buses need it
 */
public record PlugWay(ChargeRule rule, YardStretch stretch) {

    /** The same, coming once. */
    public PlugWay once() {
        return new PlugWay(rule, stretch.once());
    }

    /** Charging by a policy in this way. */
    public YardCharging charging(List<PortUnit> units, ChargeRule by) {
        YardCharging own = YardCharging.waiting(stretch, units, rule);
        if (by.equals(rule)) {
            return own;
        }
        YardCharging moved = own.by(by);
        return moved.schedule().shortKwh() <= own.schedule().shortKwh() ? moved : own;
    }
}
