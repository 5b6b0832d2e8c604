package org.amberyard.workbench.charts;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.charts.FirstElectricRoute;
import org.amberyard.charts.YardDay;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;
import org.amberyard.core.plan.BusDay;
import org.amberyard.core.plan.DayKind;
import org.amberyard.core.plan.RouteAnswer;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.yard.Metering;
import org.amberyard.core.yard.StretchKind;
import org.amberyard.workbench.session.Choices;
import org.amberyard.workbench.session.Choices.Chosen;
import org.amberyard.workbench.session.Choices.Kind;
import org.amberyard.workbench.session.Options;
import org.amberyard.workbench.session.PlanOptions;

/** What views show of a result: the user's choices as far as they are still there, sensible ones for the rest. */
final class Picks {
    private static final int NONE = -1;
    private static final int STRETCHES = StretchKind.values().length;

    private final StudyResult result;
    private final StudyInput study;
    private final List<Kind> kinds;
    private final Map<Kind, Options> options = new EnumMap<>(Kind.class);
    private final Map<Kind, Chosen> picked = new EnumMap<>(Kind.class);

    /**
     * Picks for a view.
     *
     * @param kinds what the view offers; a kind comes after those that it depends on. The plan is always picked.
     */
    Picks(StudyResult result, Choices choices, List<Kind> kinds) {
        this.result = result;
        this.study = result.input();
        this.kinds = kinds;
        pick(Kind.PLAN, choices);
        kinds.forEach(kind -> pick(kind, choices));
    }

    private void pick(Kind kind, Choices choices) {
        Options offered = offered(kind);
        options.put(kind, offered);
        offered.pick(choices.of(kind)).ifPresent(p -> picked.put(kind, p));
    }

    Options options(Kind kind) {
        return options.get(kind);
    }

    Optional<Chosen> picked(Kind kind) {
        return Optional.ofNullable(picked.get(kind));
    }

    /** Names of what is picked. */
    String names(List<Kind> of) {
        return of.stream().flatMap(k -> picked(k).stream()).map(Chosen::name).collect(Collectors.joining(", "));
    }

    /** Place of what is picked; -1 when there is nothing to pick from. */
    int place(Kind kind) {
        return picked(kind).map(Chosen::place).orElse(NONE);
    }

    /** The first kind of which there is nothing to pick. */
    Optional<Kind> missing(List<Kind> kinds) {
        return kinds.stream().filter(k -> !picked.containsKey(k)).findFirst();
    }

    /** The pollutant picked. */
    Pollutant pollutant() {
        return Pollutant.values()[place(Kind.POLLUTANT)];
    }

    /** The day picked. */
    BusDay.Asked asked() {
        Days day = Days.of(place(Kind.DAY));
        return new BusDay.Asked(place(Kind.BUS), place(Kind.YEAR), place(Kind.MONTH), day.extendedYear(), day.kind());
    }

    /** The charging policy picked. */
    ChargePolicy policy() {
        return ChargePolicy.values()[place(Kind.POLICY)];
    }

    /** The study's own is picked first. */
    private Options policies() {
        ChargeRule rule = study.depot().charging().rule();
        return Options.of(rule.comparable().stream().mapToInt(ChargePolicy::ordinal), p -> ChargePolicy.values()[p].label(), rule.policy().ordinal());
    }

    private Metering tariff(int place) {
        return place == 0 ? study.depot().metering() : study.depot().alternatives().get(place - 1);
    }

    private Options offered(Kind kind) {
        return switch (kind) {
            case PLAN -> PlanOptions.of(result);
            case COMPARED -> others();
            case ROUTE -> Options.upTo(study.duty().routes().size(), r -> study.duty().routes().get(r).name(),
                    first().map(FirstElectricRoute::route).orElse(0));
            case TYPE -> types(place(Kind.ROUTE));
            case BUS -> buses();
            case YEAR -> Options.upTo(study.years(), y -> String.valueOf(study.baseYear() + y), study.years() - 1);
            case MONTH -> Options.upTo(Climate.MONTHS, MonthNames::brief, kinds.contains(Kind.BUS) ? worstMonth().orElse(0)
                    : YardDay.dearestMonth(result.plans().get(place(Kind.PLAN)).yards().get(kinds.contains(Kind.YEAR) ? place(Kind.YEAR) : study.years() - 1)));
            case DAY -> Options.upTo(Days.count(extendedYear()), d -> Days.of(d).label(),
                    Days.place(DayKind.COLDEST, onlyExtendedYear()));
            case STRETCH -> stretches();
            case POLICY -> policies();
            case TARIFF -> Options.upTo(1 + study.depot().alternatives().size(), t -> tariff(t).tariff().name(), 0);
            case POLLUTANT -> Options.upTo(Pollutant.values().length, p -> Pollutant.values()[p].label(), 0);
        };
    }

    /** Plans other than the one picked; the baseline is what a plan is mostly compared with. */
    private Options others() {
        IntStream others = IntStream.range(0, result.plans().size()).filter(p -> p != place(Kind.PLAN));
        return Options.of(others, p -> result.plans().get(p).name(), study.baseline());
    }

    /** Stretches keep their places in all months, so that a choice finds its like in another. */
    private Options stretches() {
        List<YardDay> days = YardDay.in(result, place(Kind.PLAN), place(Kind.YEAR), place(Kind.MONTH));
        return new Options(days.stream().map(d -> new Chosen(d.label(), place(d))).toList(),
                YardDay.ofHighestDemand(result, place(Kind.PLAN), place(Kind.YEAR), place(Kind.MONTH)).map(Picks::place)
                        .orElse(NONE));
    }

    private static int place(YardDay day) {
        return day.kind().ordinal() + (day.extendedYear() ? STRETCHES : 0);
    }

    /** The stretch of days picked. */
    YardDay yardDay() {
        int stretch = place(Kind.STRETCH);
        return new YardDay(place(Kind.PLAN), place(Kind.YEAR), place(Kind.MONTH), StretchKind.values()[stretch % STRETCHES],
                stretch >= STRETCHES);
    }

    private Optional<FirstElectricRoute> first() {
        return FirstElectricRoute.of(result, place(Kind.PLAN));
    }

    private Options types(int route) {
        if (route == NONE) {
            return new Options(List.of(), NONE);
        }
        IntStream fitting = IntStream.range(0, study.types().size())
                .filter(t -> study.types().get(t).electric().isPresent() && result.duty().use(route, t).isPresent());
        int preferred = answer(route).fit().map(RouteFit::type).orElse(NONE);
        return Options.of(fitting, t -> study.types().get(t).name(), preferred);
    }

    /** Places that the plan makes electric in any year; all places where it makes none so. */
    private Options buses() {
        List<Integer> electric = result.plans().get(place(Kind.PLAN)).fleet().years().stream()
                .filter(v -> study.types().get(v.vehicle().type()).electric().isPresent()).map(VehicleYear::place).distinct()
                .sorted().toList();
        IntStream places = electric.isEmpty() ? IntStream.range(0, study.buses().size())
                : electric.stream().mapToInt(Integer::intValue);
        return Options.of(places, p -> study.buses().get(p).name(),
                first().flatMap(FirstElectricRoute::day).map(BusDay.Asked::place).orElse(NONE));
    }

    private Optional<RouteInput> busRoute() {
        return busRoutePlace().stream().mapToObj(study.duty().routes()::get).findFirst();
    }

    private OptionalInt busRoutePlace() {
        return place(Kind.BUS) == NONE ? OptionalInt.empty() : study.buses().get(place(Kind.BUS)).route();
    }

    private Optional<Integer> worstMonth() {
        return busRoutePlace().stream().boxed().findFirst().flatMap(route -> answer(route).fit())
                .map(FirstElectricRoute::worstMonth);
    }

    private RouteAnswer answer(int route) {
        return RouteAnswer.of(result, place(Kind.PLAN)).get(route);
    }

    private boolean extendedYear() {
        return busRoute().filter(route -> route.runs().stream().anyMatch(RunInput::extendedYear)).isPresent();
    }

    /** True when the bus runs in the picked month on days of the extended year only. */
    private boolean onlyExtendedYear() {
        return busRoute().filter(route -> FirstElectricRoute.onlyExtendedYear(route, place(Kind.MONTH))).isPresent();
    }
}
