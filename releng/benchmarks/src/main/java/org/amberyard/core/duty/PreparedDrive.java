package org.amberyard.core.duty;

import java.util.List;

/** Runs with their flat arrays made ready, so that a benchmark can time the sum over them alone. */
public final class PreparedDrive {
    private final List<TraceSteps> pieces;
    private final ElectricSpec bus;
    private final RoadLoad load;

    /** Traces cut where the bus stands, for a bus with riders of a mass at 18 °C. */
    public PreparedDrive(List<SpeedTrace> traces, ElectricSpec bus, double ridersKg) {
        this.pieces = traces.stream().flatMap(t -> t.cutAtRest().stream()).map(TraceSteps::new).toList();
        this.bus = bus;
        this.load = bus.body().roadLoad(ridersKg, 18, 300);
    }

    /** Energy drawn over all pieces, kWh. */
    public double drawnKwh() {
        double sum = 0;
        for (TraceSteps steps : pieces) {
            sum += TractiveWork.of(steps, load, bus.body().driveline(), bus.recovery(), Double.MAX_VALUE).drawnKwh();
        }
        return sum;
    }
}
