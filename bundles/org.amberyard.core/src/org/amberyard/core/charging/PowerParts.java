package org.amberyard.core.charging;

import java.util.List;

/** How power is parted among buses that draw at the same time. */
interface PowerParts {

    /**
     * Cuts what buses ask for to what each gets.
     *
     * @param buses all buses; those that are granted do not draw
     * @param drawing how many draw
     */
    void share(List<SharingBus> buses, int drawing);

    /**
     * Equal parts of the power of a port; buses that ask for less leave the rest to the others. See {@link PortUnit}.
     *
     * @param powerKw power of the port at the meter, kW
     */
    record Equal(double powerKw) implements PowerParts {
        @Override
        public void share(List<SharingBus> buses, int drawing) {
            double leftKw = powerKw;
            int left = drawing;
            for (boolean again = true; again && left > 0;) {
                again = false;
                double partKw = leftKw / left;
                for (SharingBus bus : buses) {
                    if (!bus.granted && bus.meterKw <= partKw) {
                        bus.granted = true;
                        leftKw -= bus.meterKw;
                        left--;
                        again = true;
                    }
                }
            }
            for (SharingBus bus : buses) {
                bus.meterKw = bus.granted ? bus.meterKw : leftKw / left;
            }
        }
    }
}
