package org.amberyard.core.charging;

import java.util.List;

/**
 * Charging of a stretch by a policy that looks at each port alone: at once, at a set time, or spread to the departure; or at all of them
 * under a cap. Constant power first, then the taper, exact within steps. With least cost it tells whether every bus can be ready at full power.
 *
 * <p>Energy at the meter is energy in the battery over the port's efficiency. Standby power of the ports is drawn at all hours
 * and not in it; with it the efficiency rises with the load, as a constant loss beside a proportional one gives it; common
 * practice, no source.
 *
 * @param stretch the stretch
 * @param units ports
 * @param rule policy
 */
record PolicyRun(YardStretch stretch, List<PortUnit> units, ChargeRule rule) {

    ChargeSchedule of(PortAssignment assignment) {
        ScheduleRun run = new ScheduleRun(stretch, units, assignment);
        if (rule.policy() == ChargePolicy.CAPPED) {
            new SharedRun(new DepartureParts(units, rule.capKw()), stretch.grid(), rule).charge(run.all());
            return run.schedule(0);
        }
        for (int unit = 0; unit < units.size(); unit++) {
            List<PlugCharge> charges = run.at(unit);
            if (sharesPower(units.get(unit), charges)) {
                new SharedRun(new PowerParts.Equal(units.get(unit).port().powerKw()), stretch.grid(), rule).charge(charges);
            } else {
                charges.forEach(this::alone);
            }
        }
        return run.schedule(0);
    }

    private void alone(PlugCharge charge) {
        boolean spread = rule.policy() == ChargePolicy.SPREAD;
        for (ChargeTimes.Span time : charge.times(rule).spans()) {
            charge.run(time, spread ? charge.evenKw(time.fromMin(), time.toMin()) : charge.limitKw);
        }
    }

    /** True when the buses of a port could together draw more than it gives. */
    static boolean sharesPower(PortUnit unit, List<PlugCharge> charges) {
        double[] plugKw = new double[unit.plugs()];
        for (PlugCharge charge : charges) {
            int plug = charge.plugged.plug();
            plugKw[plug] = Math.max(plugKw[plug], charge.limitKw / charge.efficiency);
        }
        double sum = 0;
        for (double kw : plugKw) {
            sum += kw;
        }
        return unit.plugs() > 1 && sum > unit.port().powerKw();
    }
}
