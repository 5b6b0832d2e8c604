package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.consumption.ConsumptionCurve;

/**
 * One vehicle type on one route: drives its day in any weather.
 *
 * <p>A year is the sum over months of the days of service times an average day of the month; feasibility is judged on the
 * coldest and hottest operated days.
 */
public final class RouteDuty {
    private final DutyInput duty;
    private final List<RunDrive> drives;
    private final Map<RunDrive, VehicleRun> driven;
    private final VehicleSpec vehicle;
    private final double factor;
    private final boolean byCurve;

    RouteDuty(DutyInput duty, RouteInput route, List<RunDrive> drives, VehicleSpec vehicle, double factor) {
        this.duty = duty;
        this.drives = List.copyOf(drives);
        this.vehicle = vehicle;
        this.driven = drives.stream().collect(Collectors.toMap(d -> d, d -> new VehicleRun(d, vehicle, duty)));
        this.factor = factor;
        this.byCurve = route.energyModel() == EnergyModel.CURVE;
    }

    /**
     * A vehicle type on a route that need not be one of the input's, for example with a trip added.
     *
     * @param factor calibration of the energy by measurements, 1 for none
     */
    public static RouteDuty of(DutyInput duty, RouteInput route, VehicleSpec vehicle, double factor) {
        return new RouteDuty(duty, route, drives(duty, route), vehicle, factor);
    }

    static List<RunDrive> drives(DutyInput duty, RouteInput route) {
        return route.runs().stream().map(run -> new RunDrive(run, duty.style())).toList();
    }

    /** Use of a year and the design days. */
    public RouteUse use() {
        EnergyUse year = EnergyUse.ZERO;
        List<RouteUse.DesignDay> days = new ArrayList<>();
        List<RouteUse.NormalDay> normalDays = new ArrayList<>();
        for (Service served : services()) {
            int month = served.month();
            boolean extendedYear = served.extendedYear();
            WeatherDay normal = duty.climate().months().get(month).normal();
            if (vehicle instanceof ElectricSpec) {
                DayBlock block = block(month, extendedYear, normal, duty.habit());
                EnergyUse monthUse = monthSum(month, extendedYear, block.uses());
                year = year.plus(monthUse);
                normalDays.add(new RouteUse.NormalDay(month, extendedYear, days(month, extendedYear), block, monthUse));
                days.add(designDay(month, extendedYear, true));
                days.add(designDay(month, extendedYear, false));
            } else {
                year = year.plus(monthUse(month, extendedYear, normal));
            }
        }
        return new RouteUse(year, days, normalDays);
    }

    /** A month with days of one kind on which the route is driven. */
    private record Service(int month, boolean extendedYear) {
    }

    private List<Service> services() {
        return IntStream.range(0, 2 * Climate.MONTHS).mapToObj(i -> new Service(i / 2, i % 2 == 1))
                .filter(s -> drivenOn(s.month(), s.extendedYear())).toList();
    }

    /** True when the route is driven on school days, or on days of the extended-year programme, of a month. */
    public boolean drivenOn(int month, boolean extendedYear) {
        return !together(month, extendedYear).isEmpty();
    }

    /** Days of service of a month: those of its most frequent run. */
    public int days(int month, boolean extendedYear) {
        return together(month, extendedYear).stream().mapToInt(d -> d.run().daysByMonth().get(month)).max().orElse(0);
    }

    private RouteUse.DesignDay designDay(int month, boolean extendedYear, boolean cold) {
        Climate.MonthWeather weather = duty.climate().months().get(month);
        WeatherDay day = cold ? weather.coldest() : weather.hottest();
        List<RunWork> work = work(month, extendedYear, day);
        DayBlock overnight = electricDay(work, day, duty.habit().withMidday(false)).block();
        return new RouteUse.DesignDay(month, extendedYear, cold, overnight,
                electricDay(work, day, duty.habit().withMidday(true)).block());
    }

    /** Use of all days of a month, each in the same weather; nothing when the route is not driven. */
    public EnergyUse monthUse(int month, WeatherDay weather) {
        return monthUse(month, false, weather).plus(monthUse(month, true, weather));
    }

    private EnergyUse monthUse(int month, boolean extendedYear, WeatherDay day) {
        return drivenOn(month, extendedYear) ? monthSum(month, extendedYear, uses(month, extendedYear, day)) : EnergyUse.ZERO;
    }

    private EnergyUse monthSum(int month, boolean extendedYear, List<EnergyUse> uses) {
        List<RunDrive> driven = together(month, extendedYear);
        EnergyUse sum = EnergyUse.ZERO;
        for (int place = 0; place < driven.size(); place++) {
            sum = sum.plus(uses.get(place).times(driven.get(place).run().daysByMonth().get(month)));
        }
        return sum;
    }

    /** Use of one day of a month in a weather; nothing when the route is not driven. */
    public EnergyUse dayUse(int month, boolean extendedYear, WeatherDay weather) {
        return drivenOn(month, extendedYear)
                ? uses(month, extendedYear, weather).stream().reduce(EnergyUse.ZERO, EnergyUse::plus) : EnergyUse.ZERO;
    }

    /**
     * The day of an electric bus in a month, in a weather.
     *
     * @throws IllegalArgumentException when the vehicle has an engine or the route is not driven
     */
    public DayBlock block(int month, boolean extendedYear, WeatherDay weather, YardHabit habit) {
        if (!(vehicle instanceof ElectricSpec) || !drivenOn(month, extendedYear)) {
            throw new IllegalArgumentException(vehicle.name() + " has no electric day in month " + (month + 1));
        }
        return electricDay(work(month, extendedYear, weather), weather, habit).block();
    }

    private List<EnergyUse> uses(int month, boolean extendedYear, WeatherDay weather) {
        List<RunWork> work = work(month, extendedYear, weather);
        if (vehicle instanceof EngineSpec engine) {
            return work.stream().map(w -> EngineRun.of(engine, w, factor)).toList();
        }
        return electricDay(work, weather, duty.habit()).block().uses();
    }

    private ElectricDay electricDay(List<RunWork> work, WeatherDay weather, YardHabit habit) {
        ElectricSpec electric = (ElectricSpec) vehicle;
        Optional<ConsumptionCurve> curve = byCurve ? electric.curve() : Optional.empty();
        return new ElectricDay(electric, work, weather, habit, factor, curve);
    }

    private List<RunWork> work(int month, boolean extendedYear, WeatherDay weather) {
        return together(month, extendedYear).stream()
                .map(drive -> new RunWork(driven.get(drive), vehicle, weather, duty)).toList();
    }

    /** Runs that one day of a month can ask of the bus: a school day's, or an extended-year day's. */
    private List<RunDrive> together(int month, boolean extendedYear) {
        return drives.stream().filter(d -> d.run().extendedYear() == extendedYear && d.run().daysByMonth().get(month) > 0)
                .toList();
    }
}
