package org.amberyard.study;

import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.plan.CoverYear;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/**
 * Findings on routes that have no bus, and on trips and routes that the fleet of a plan leaves uncovered before the last year alone; what it
 * does then has findings of its own.
 */
final class CoverYearFindings {
    private static final int MOST_YEARS = 3;
    private static final int MOST_NAMES = 4;

    private final Study study;
    private final StudyInput input;
    private final String name;
    private final int plan;
    private final List<CoverYear> years;
    private final CoverYear last;

    CoverYearFindings(Study study, StudyResult result, int plan) {
        this.study = study;
        this.input = result.input();
        this.name = result.plans().get(plan).name();
        this.plan = plan;
        this.years = result.covers().get(plan).subList(0, input.years() - 1);
        this.last = result.covers().get(plan).get(input.years() - 1);
    }

    List<Finding> list() {
        return Stream.concat(undriven(), before()).toList();
    }

    /** Routes that have no bus, which makes a plan look cheap; the last year counts too. */
    private Stream<Finding> undriven() {
        List<CoverYear> all = Stream.concat(years.stream(), Stream.of(last)).toList();
        List<CoverYear> gaps = all.stream().filter(y -> !y.undriven().isEmpty()).toList();
        return gaps.isEmpty() ? Stream.empty() : Stream.of(new Finding(Severity.WARNING, study.getPlans().get(plan), null, "Plan “" + name
                + "”: routes have no bus in " + gaps.size() + (gaps.size() == 1 ? " year" : " years") + ", so that the plan costs less than what "
                + "is to be driven: " + told(gaps, CoverYear::undriven, r -> input.duty().routes().get(r).name()) + "."));
    }

    private Stream<Finding> before() {
        return Stream.concat(finding("no bus can cover some trips", CoverYear::trips, t -> input.trips().get(t).name()),
                finding("no spare can stand in on some routes", CoverYear::routes, r -> input.duty().routes().get(r).name()));
    }

    private Stream<Finding> finding(String fact, Function<CoverYear, List<Integer>> all, IntFunction<String> named) {
        Function<CoverYear, List<Integer>> open = year -> all.apply(year).stream().filter(o -> !all.apply(last).contains(o)).toList();
        List<CoverYear> gaps = years.stream().filter(y -> !open.apply(y).isEmpty()).toList();
        if (gaps.isEmpty()) {
            return Stream.empty();
        }
        return Stream.of(new Finding(Severity.WARNING, study.getPlans().get(plan), null, "Plan “" + name + "”: " + fact + " in " + gaps.size()
                + (gaps.size() == 1 ? " year" : " years") + " before the last: " + told(gaps, open, named) + "."));
    }

    private String told(List<CoverYear> gaps, Function<CoverYear, List<Integer>> open, IntFunction<String> named) {
        int more = gaps.size() - MOST_YEARS;
        return gaps.stream().limit(MOST_YEARS).map(y -> input.baseYear() + y.year() + " (" + names(open.apply(y), named) + ")")
                .collect(Collectors.joining("; ")) + (more > 0 ? "; +" + more : "");
    }

    private static String names(List<Integer> open, IntFunction<String> named) {
        String first = open.stream().limit(MOST_NAMES).map(named::apply).collect(Collectors.joining(", "));
        return open.size() > MOST_NAMES ? first + ", +" + (open.size() - MOST_NAMES) : first;
    }
}
