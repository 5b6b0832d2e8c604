package org.amberyard.core.duty;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.amberyard.core.progress.Progress;

/**
 * What every route takes of every vehicle type whose body fits it: the first stage of a study. A pair is driven when it is asked for
 * first. Safe for use from several threads.
 */
public final class DutyTable {
    private final DutyInput input;
    private final List<List<RunDrive>> drives;
    private final List<RouteCalibration> calibrations;
    private final Map<Pair, RouteUse> uses = new ConcurrentHashMap<>();
    private final Map<Integer, EnergyUse> perKm = new ConcurrentHashMap<>();
    private final Map<Variant, RouteUse> variants = new ConcurrentHashMap<>();
    private final PackYears packYears;

    private DutyTable(DutyInput input, List<List<RunDrive>> drives) {
        this.input = input;
        this.drives = List.copyOf(drives);
        this.calibrations = IntStream.range(0, drives.size()).mapToObj(r -> RouteCalibration.of(input, r, drives.get(r))).toList();
        this.packYears = new PackYears(input.climate());
    }

    /** Drives every route with every vehicle type that fits it, so that nobody who asks later waits. */
    public static DutyTable of(DutyInput input) {
        return of(input, Progress.NONE);
    }

    /**
     * The same, telling how far it is.
     *
     * @throws CancellationException when the progress throws it
     */
    public static DutyTable of(DutyInput input, Progress progress) {
        int vehicles = input.vehicles().size();
        progress.at(0);
        DutyTable table = new DutyTable(input, drives(input));
        for (int vehicle = 0; vehicle < vehicles; vehicle++) {
            table.drive(vehicle, progress.part(vehicle, vehicles));
        }
        return table;
    }

    private void drive(int vehicle, Progress progress) {
        int routes = input.routes().size();
        for (int route = 0; route < routes; route++) {
            progress.at((double) route / routes);
            use(route, vehicle);
        }
        perKm(vehicle);
    }

    /** The same for an input that differs from this one's, each pair driven only when it is asked for. */
    public DutyTable asAsked(DutyInput variant) {
        return new DutyTable(variant, variant.routes().equals(input.routes()) && variant.style().equals(input.style()) ? drives
                : drives(variant));
    }

    private static List<List<RunDrive>> drives(DutyInput input) {
        return input.routes().stream().map(route -> RouteDuty.drives(input, route)).toList();
    }

    private static boolean fits(RouteInput route, VehicleSpec vehicle) {
        return vehicle.body().bodyType().equals(route.bodyType());
    }

    /** The input that this table was computed from. */
    public DutyInput input() {
        return input;
    }

    /** Use of a vehicle type on a route, both by their place in the input; empty when the body type does not fit. */
    public Optional<RouteUse> use(int route, int vehicle) {
        return fits(input.routes().get(route), input.vehicles().get(vehicle))
                ? Optional.of(uses.computeIfAbsent(new Pair(route, vehicle), p -> duty(p.route(), p.vehicle()).use())) : Optional.empty();
    }

    /** Minutes that the runs of a route take as driven, in their order; longer than scheduled where the schedule is too tight. */
    public List<Double> drivenMin(int route) {
        return drives.get(route).stream().map(d -> d.hours() * 60).toList();
    }

    /** What the routes do to packs. */
    public PackYears packYears() {
        return packYears;
    }

    /** What measurements say about the model on a route. */
    public RouteCalibration calibration(int route) {
        return calibrations.get(route);
    }

    /** A vehicle type on a route, to be driven in any weather. */
    public RouteDuty duty(int route, int vehicle) {
        return duty(input, route, input.vehicles().get(vehicle));
    }

    /** The runs of a route are driven alike under every habit of the yard, so they are not made again. */
    private RouteDuty duty(DutyInput under, int route, VehicleSpec spec) {
        return new RouteDuty(under, input.routes().get(route), drives.get(route), spec, calibrations.get(route).factor(spec));
    }

    /**
     * Use of an electric type on a route under another habit of the yard, or with a fuel-fired heater. What was asked once is
     * kept, because remedies are asked again at every change of a price.
     */
    public RouteUse variant(int route, int vehicle, YardHabit habit, boolean fuelFired) {
        return variants.computeIfAbsent(new Variant(route, vehicle, habit, fuelFired), this::drive);
    }

    private record Variant(int route, int vehicle, YardHabit habit, boolean fuelFired) {
    }

    private RouteUse drive(Variant asked) {
        ElectricSpec own = (ElectricSpec) input.vehicles().get(asked.vehicle());
        ElectricSpec spec = asked.fuelFired() ? own.withHeater(own.heater().fuelFired()) : own;
        return duty(input.withHabit(asked.habit()), asked.route(), spec).use();
    }

    private record Pair(int route, int vehicle) {
    }

    /** Average use per distance of a vehicle type over the routes that it fits, weighted by their distance per year. */
    public EnergyUse perKm(int vehicle) {
        return perKm.computeIfAbsent(vehicle, this::meanPerKm);
    }

    private EnergyUse meanPerKm(int vehicle) {
        EnergyUse sum = EnergyUse.ZERO;
        for (int route = 0; route < input.routes().size(); route++) {
            sum = sum.plus(use(route, vehicle).map(RouteUse::year).orElse(EnergyUse.ZERO));
        }
        return sum.km() > 0 ? sum.times(1 / sum.km()) : EnergyUse.ZERO;
    }
}
