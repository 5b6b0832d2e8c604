package org.amberyard.charts;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BillLine;
import org.amberyard.core.tariff.PeakMoment;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.yard.MonthLoad;
import org.amberyard.core.yard.StretchKind;
import org.amberyard.core.yard.StretchLoad;
import org.amberyard.core.yard.YardYear;

/**
 * A stretch of days of a month at the yard of a plan.
 *
 * @param plan place of the plan
 * @param year year, counted from the base year
 * @param month month, 0 for January
 * @param kind kind of stretch
 * @param extendedYear true for the extended-year programme
 */
public record YardDay(int plan, int year, int month, StretchKind kind, boolean extendedYear) {

    /** The stretches of a month, school first. */
    public static List<YardDay> in(StudyResult result, int plan, int year, int month) {
        return yard(result, plan, year).input().calendar().in(month).stream()
                .flatMap(s -> List.of(StretchKind.values()).stream().filter(k -> s.times().containsKey(k))
                        .map(k -> new YardDay(plan, year, month, k, s.extendedYear())))
                .toList();
    }

    /** The stretch whose load sets the billed demand of a month, else the coldest day; empty where no route is driven. */
    public static Optional<YardDay> ofHighestDemand(StudyResult result, int plan, int year, int month) {
        List<YardDay> days = in(result, plan, year, month);
        Optional<PeakMoment> peak = yard(result, plan, year).bills().bills().get(month).lines().stream()
                .sorted(Comparator.comparingDouble(BillLine::amount).reversed()).flatMap(l -> l.peak().stream())
                .filter(p -> p.month() == month).findFirst();
        return peak.flatMap(p -> days.stream().filter(d -> p.day().label().endsWith(d.label())).findFirst())
                .or(() -> days.stream().filter(d -> d.kind == StretchKind.COLDEST_DAY).findFirst())
                .or(() -> days.stream().findFirst());
    }

    /**
     * What charts of a yard show until something else is chosen: the first plan that is electric at the end of the study, its
     * last year, the month of the highest bill and the stretch that sets its demand; empty where no plan is electric.
     */
    public static Optional<YardDay> first(StudyResult result) {
        int year = result.input().years() - 1;
        return IntStream.range(0, result.plans().size()).filter(p -> !yard(result, p, year).input().buses().isEmpty()).boxed()
                .findFirst().flatMap(p -> ofHighestDemand(result, p, year, dearestMonth(yard(result, p, year))));
    }

    /** The month of the highest bill, 0 for January; the first of equals. */
    public static int dearestMonth(YardYear year) {
        List<Bill> bills = year.bills().bills();
        return IntStream.range(0, bills.size()).boxed()
                .max(Comparator.<Integer>comparingDouble(m -> bills.get(m).total()).thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
    }

    static YardYear yard(StudyResult result, int plan, int year) {
        return result.plans().get(plan).yards().get(year);
    }

    YardYear yard(StudyResult result) {
        return yard(result, plan, year);
    }

    /** Words for lists, as on the bill. */
    public String label() {
        return kind.label() + (extendedYear ? ", extended year" : "");
    }

    /** Its load; empty where the month has no such stretch. */
    Optional<StretchLoad> of(MonthLoad load) {
        return load.stretches().stream().filter(s -> s.kind() == kind && s.service().extendedYear() == extendedYear)
                .findFirst();
    }

    /** For example {@code Plan “Electric”, coldest day of January 2034}. */
    String heading(StudyResult result) {
        PlanResult of = result.plans().get(plan);
        return "Plan “" + of.name() + "”, " + label() + " of " + MonthNames.full(month) + " "
                + (result.input().baseYear() + year);
    }

    /** Why there is no load to show. */
    String none(StudyResult result) {
        return yard(result).input().buses().isEmpty() ? withoutBuses(result, plan, year)
                : MonthNames.full(month) + " has no " + label() + ".";
    }

    /** Why there is nothing to show of a plan's year. */
    static String withoutBuses(StudyResult result, int plan, int year) {
        return "Plan “" + result.plans().get(plan).name() + "” has no electric bus in "
                + (result.input().baseYear() + year) + ".";
    }
}
