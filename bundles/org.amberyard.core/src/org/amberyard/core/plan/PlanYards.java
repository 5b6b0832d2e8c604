package org.amberyard.core.plan;

import org.amberyard.core.yard.YardYear;
import org.amberyard.core.yard.YardMemory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.Port;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.LeastLayoverCharge;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.progress.Steps;
import org.amberyard.core.tariff.BillIndex;
import org.amberyard.core.yard.Metering;
import org.amberyard.core.yard.ServiceDays;
import org.amberyard.core.yard.TripDay;
import org.amberyard.core.yard.YardBus;
import org.amberyard.core.yard.YardCalendar;
import org.amberyard.core.yard.YardInput;

/**
 * The yard of a plan in each year. A plan with electric buses but without ports is looked at with a port on offer for each
 * bus.
 *
 * <p>Years that are alike are planned once. So all have the calendar of the base year; packs count with their health at the
 * start of the year, rounded down to a fortieth, where it decides what must be charged between runs, else as new; and
 * schedules of least cost see the proportion of demand to energy prices in steps of a tenth.
 */
final class PlanYards {
    private static final double HEALTH_STEP = 1.0 / 40;
    private static final double INDEX_STEPS = 10;

    /** A route that an electric type serves. */
    private record Served(int route, int type) {
    }

    private record CalendarKey(Metering metering, Set<TripDay.Month> trips) {
    }

    private final StudyInput study;
    private final DutyTable duty;
    private final PortFleet ports;
    private final ServiceDays service;
    private final BusiestTripDays trips;
    private final Map<CalendarKey, YardCalendar> calendars = new ConcurrentHashMap<>();
    private final Map<Served, Boolean> needsLayovers = new ConcurrentHashMap<>();

    PlanYards(StudyInput study, DutyTable duty, PortFleet ports) {
        this.study = study;
        this.duty = duty;
        this.ports = ports;
        this.service = ServiceDays.of(study.duty().routes());
        this.trips = new BusiestTripDays(study, duty);
    }

    /**
     * The yard in every year, as far as it is not known planned and billed.
     *
     * @throws CancellationException when the progress throws it
     */
    List<YardYear> all(FleetHistory fleet, YardMemory memory, Progress progress) {
        return Steps.of(IntStream.range(0, study.years()).boxed().toList(), (year, check) -> memory.year(of(fleet, year)), progress);
    }

    /** The yard in a year of a fleet, on the meter in use. */
    YardInput of(FleetHistory fleet, int year) {
        return of(fleet, year, study.depot().metering());
    }

    /** The same under the other tariffs of the study. */
    List<YardInput> underOthers(FleetHistory fleet, int year) {
        return study.depot().alternatives().stream().map(metering -> of(fleet, year, metering)).toList();
    }

    private YardInput of(FleetHistory fleet, int year, Metering metering) {
        List<YardBus> buses = new ArrayList<>();
        for (VehicleYear record : fleet.inYear(year)) {
            if (study.types().get(record.vehicle().type()).electric().isPresent()) {
                buses.add(bus(record));
            }
        }
        ChargingRules charging = study.depot().charging();
        return new YardInput(buses, units(year, buses), charging.rule(), study.middayCharging(),
                study.rules().reserveShare(), metering, metering.contractYear(year, ports.firstYear()),
                demandIndex(study, year), charging.building(), calendar(metering, buses), charging.stepMin(), charging.swaps(),
                Double.POSITIVE_INFINITY);
    }

    private YardCalendar calendar(Metering metering, List<YardBus> buses) {
        int calendarYear = study.depot().charging().calendarYear().orElse(study.baseYear());
        Set<TripDay.Month> months = buses.stream().flatMap(b -> b.trips().stream()).map(TripDay::in).collect(Collectors.toSet());
        return calendars.computeIfAbsent(new CalendarKey(metering, months),
                key -> YardCalendar.of(service, metering.days(study.money().fiscal(), calendarYear), months));
    }

    private YardBus bus(VehicleYear record) {
        BusInput place = study.buses().get(record.place());
        int type = record.vehicle().type();
        VehicleTypeInput of = study.types().get(type);
        OptionalInt route = place.route();
        Optional<RouteUse> use = route.isPresent() ? duty.use(route.getAsInt(), type).filter(u -> u.year().km() > 0)
                : Optional.empty();
        EnergyUse other = YearOfDriving.otherUse(duty, place, type);
        BatterySpec battery = of.electric().orElseThrow().battery();
        return new YardBus(record.place(), record.vehicle().unit(), of.acAcceptanceKw(), of.dcAcceptanceKw(), battery,
                health(record, use), use, 1 - study.rules().spareCoverShare(), other,
                trips.of(record.place(), type));
    }

    private double health(VehicleYear record, Optional<RouteUse> use) {
        int type = record.vehicle().type();
        boolean decides = study.middayCharging() && use.isPresent() && needsLayovers.computeIfAbsent(
                new Served(study.buses().get(record.place()).route().getAsInt(), type),
                served -> needsLayovers(use.get(), study.types().get(type).electric().orElseThrow().battery()));
        double health = Math.floor(record.vehicle().health() / HEALTH_STEP + 1e-9) * HEALTH_STEP;
        return decides ? Math.max(HEALTH_STEP, health) : 1;
    }

    /** True when a pack at the end of its life must be charged between runs on some day. */
    private boolean needsLayovers(RouteUse use, BatterySpec battery) {
        double worn = battery.life().endOfLifeShare();
        return use.designDays().stream().anyMatch(day -> !new LeastLayoverCharge(day.midday(), battery, worn,
                study.rules().reserveShare()).at(Double.POSITIVE_INFINITY).isEmpty());
    }

    /** The port type on offer that brings most into a bus, AC before DC. */
    private Port usual(YardBus bus) {
        return study.depot().ports().stream().max(Comparator.comparing((Port p) -> !p.direct() && bus.acKw() > 0)
                .thenComparingDouble(p -> p.batteryKw(p.direct() ? bus.dcKw() : bus.acKw()))).orElseThrow();
    }

    private List<PortUnit> units(int year, List<YardBus> buses) {
        List<PortUnit> bought = ports.units(year);
        if (!bought.isEmpty() || buses.isEmpty()) {
            return bought;
        }
        return buses.stream().map(this::usual).map(port -> new PortUnit(port, port.plugs())).toList();
    }

    /** Rise of demand prices over rise of energy prices, in steps. */
    static double demandIndex(StudyInput study, int year) {
        BillIndex index = BillPaths.of(study, year);
        return demandIndex(indexStep(index.demand(), index.energy()));
    }

    /** The same, counted in steps. */
    static long indexStep(double demand, double energy) {
        return Math.round(demand / energy * INDEX_STEPS);
    }

    /** The rise at a number of steps. */
    static double demandIndex(long step) {
        return step / INDEX_STEPS;
    }
}
