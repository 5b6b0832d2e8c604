package org.amberyard.charts;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;
import org.amberyard.core.plan.BusDay;
import org.amberyard.core.plan.DayKind;
import org.amberyard.core.plan.RouteAnswer;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.Vehicle;

/**
 * What charts of a single route or bus show until something else is chosen: the first route that a plan serves with an electric
 * bus at the end of the study, else the first on which an electric type can be judged.
 *
 * @param plan place of the plan
 * @param route place of the route
 * @param type place of its electric type
 * @param day the worst month's coldest day of the bus there in the last year; empty when the plan has no electric bus there
 */
public record FirstElectricRoute(int plan, int route, int type, Optional<BusDay.Asked> day) {

    /** The route of a plan; empty when no electric type can be judged on any. */
    public static Optional<FirstElectricRoute> of(StudyResult result, int plan) {
        List<RouteAnswer> answers = RouteAnswer.of(result, plan).stream().filter(a -> a.fit().isPresent()).toList();
        return answers.stream().filter(RouteAnswer::electric).findFirst().or(() -> answers.stream().findFirst())
                .map(a -> of(result, plan, a));
    }

    /** The route of the first plan that is compared with the baseline, else of the baseline. */
    public static Optional<FirstElectricRoute> of(StudyResult result) {
        return of(result, FirstPlan.of(result));
    }

    private static FirstElectricRoute of(StudyResult result, int plan, RouteAnswer answer) {
        RouteFit fit = answer.fit().orElseThrow();
        int month = worstMonth(fit);
        boolean extendedYear = onlyExtendedYear(result.input().duty().routes().get(fit.route()), month);
        Optional<BusDay.Asked> day = place(result, plan, fit).stream()
                .mapToObj(p -> new BusDay.Asked(p, result.input().years() - 1, month, extendedYear, DayKind.COLDEST))
                .findFirst();
        return new FirstElectricRoute(plan, fit.route(), fit.type(), day);
    }

    /** The month that is worst for an aged pack, 0 for January. */
    public static int worstMonth(RouteFit fit) {
        return fit.months().stream().min(Comparator.comparing(RouteFit.Month::whenAged, BlockCheck.Outcome.WORST_FIRST))
                .orElseThrow().month();
    }

    /** True when a route is driven in a month, 0 for January, on days of the extended-year programme only. */
    public static boolean onlyExtendedYear(RouteInput route, int month) {
        List<RunInput> driven = route.runs().stream().filter(r -> r.daysByMonth().get(month) > 0).toList();
        return !driven.isEmpty() && driven.stream().allMatch(RunInput::extendedYear);
    }

    private static OptionalInt place(StudyResult result, int plan, RouteFit fit) {
        StudyInput study = result.input();
        List<Optional<Vehicle>> fleet = result.plans().get(plan).fleet().fleetAtEnd();
        return IntStream.range(0, study.buses().size())
                .filter(p -> study.buses().get(p).route().equals(OptionalInt.of(fit.route())))
                .filter(p -> fleet.get(p).filter(v -> v.type() == fit.type()).isPresent())
                .findFirst();
    }
}
