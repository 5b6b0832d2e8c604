package org.amberyard.core.charging;

import java.util.Comparator;
import java.util.List;

/**
 * Power of a yard under a cap: whoever leaves first gets all that it can take, the next what is left, until the cap or the power of the
 * bus's port is used up. Those that leave at the same time come by their number.
 *
 * @param units ports
 * @param capKw power at the meter that all together may draw, kW
 */
record DepartureParts(List<PortUnit> units, double capKw) implements PowerParts {
    private static final Comparator<SharingBus> FIRST_TO_LEAVE = Comparator.comparingDouble(SharingBus::leavesMin)
            .thenComparingInt(b -> b.charge.plugged.plugIn().bus());

    @Override
    public void share(List<SharingBus> buses, int drawing) {
        double leftKw = capKw;
        double[] ofPortKw = units.stream().mapToDouble(u -> u.port().powerKw()).toArray();
        for (SharingBus bus : buses.stream().filter(b -> !b.granted).sorted(FIRST_TO_LEAVE).toList()) {
            int port = bus.charge.plugged.unit();
            bus.meterKw = Math.min(bus.meterKw, Math.min(leftKw, ofPortKw[port]));
            leftKw -= bus.meterKw;
            ofPortKw[port] -= bus.meterKw;
        }
    }
}
