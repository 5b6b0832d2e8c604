package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/** What every route takes of every vehicle type whose body fits it: the first stage of a study. */
public final class DutyTable {
    private final DutyInput input;
    private final List<List<Optional<RouteUse>>> uses;
    private final List<List<RunDrive>> drives;
    private final List<RouteCalibration> calibrations;
    private final List<EnergyUse> perKm;
    private final Map<Variant, RouteUse> variants = new ConcurrentHashMap<>();
    private final PackYears packYears;

    private DutyTable(DutyInput input, List<List<Optional<RouteUse>>> uses, List<List<RunDrive>> drives,
            List<RouteCalibration> calibrations) {
        this.input = input;
        this.uses = List.copyOf(uses);
        this.drives = List.copyOf(drives);
        this.calibrations = List.copyOf(calibrations);
        this.packYears = new PackYears(input.climate());
        this.perKm = IntStream.range(0, input.vehicles().size()).mapToObj(v -> perKm(uses, v)).toList();
    }

    /** Drives every route with every vehicle type that fits it. */
    public static DutyTable of(DutyInput input) {
        List<List<Optional<RouteUse>>> uses = new ArrayList<>();
        List<List<RunDrive>> allDrives = new ArrayList<>();
        List<RouteCalibration> calibrations = new ArrayList<>();
        for (int place = 0; place < input.routes().size(); place++) {
            RouteInput route = input.routes().get(place);
            List<RunDrive> drives = RouteDuty.drives(input, route);
            allDrives.add(drives);
            RouteCalibration calibration = RouteCalibration.of(input, place, drives);
            calibrations.add(calibration);
            uses.add(input.vehicles().stream().map(vehicle -> fits(route, vehicle)
                    ? Optional.of(new RouteDuty(input, route, drives, vehicle, calibration.factor(vehicle)).use())
                    : Optional.<RouteUse>empty()).toList());
        }
        return new DutyTable(input, uses, allDrives, calibrations);
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
        return uses.get(route).get(vehicle);
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

    /** Average use per distance of a vehicle type over the routes that it fits, weighted by their distance per year. */
    public EnergyUse perKm(int vehicle) {
        return perKm.get(vehicle);
    }

    private static EnergyUse perKm(List<List<Optional<RouteUse>>> uses, int vehicle) {
        EnergyUse sum = EnergyUse.ZERO;
        for (List<Optional<RouteUse>> ofRoute : uses) {
            sum = sum.plus(ofRoute.get(vehicle).map(RouteUse::year).orElse(EnergyUse.ZERO));
        }
        return sum.km() > 0 ? sum.times(1 / sum.km()) : EnergyUse.ZERO;
    }
}
