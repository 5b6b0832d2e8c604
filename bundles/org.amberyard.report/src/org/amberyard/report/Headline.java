package org.amberyard.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.charts.Figures;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;

/**
 * The answer for one plan in words.
 *
 * @param plan place of the plan in the study
 * @param cost what it costs against the baseline, when it pays back and what it does to the air
 * @param routes routes without a bus and buses that charging leaves short, if any; which routes go electric and whether they can
 * @param service whether the electric service carries it
 * @param awards which awards it counts on as certain; blank where none
 */
public record Headline(int plan, String cost, String routes, String service, String awards) {

    /** One headline for each plan that is compared with the baseline, or one for the baseline when it stands alone. */
    public static List<Headline> of(StudyResult result, UnitSystem system) {
        return result.comparisons().isEmpty() ? List.of(ofBaseline(result))
                : result.comparisons().stream().map(c -> of(result, c)).toList();
    }

    /** The sentences as one paragraph. */
    public String text() {
        return String.join(" ", sentences());
    }

    /** The sentences. */
    public List<String> sentences() {
        return Stream.of(cost, routes, service, awards).filter(s -> !s.isBlank()).toList();
    }

    /** What programmes pay that nobody doubts, in money of the years of purchase. */
    private static String awards(StudyResult result, int plan) {
        List<Programme> programmes = result.input().funding().programmes();
        List<String> counted = IntStream.range(0, programmes.size()).filter(p -> programmes.get(p).isCertain())
                .mapToObj(p -> new Counted(programmes.get(p).name(), paid(result, plan, p))).filter(c -> c.amount() > 0)
                .map(c -> "“" + c.name() + "” " + Figures.money(result.input().currency(), c.amount())).toList();
        return counted.isEmpty() ? "" : "It counts on awards as certain: " + String.join(", ", counted) + ".";
    }

    private record Counted(String name, double amount) {
    }

    private static double paid(StudyResult result, int plan, int programme) {
        return result.plans().get(plan).funding().awards().lines().stream().flatMap(l -> l.awards().stream())
                .filter(a -> a.programme() == programme).mapToDouble(Award::paid).sum();
    }

    /** What spoils the answer comes before what holds. */
    private static String routes(StudyResult result, int plan) {
        RouteSentence routes = new RouteSentence(result, plan);
        return Stream.of(routes.undriven(), ServiceSentence.unready(result.plans().get(plan), result.input().baseYear()), routes.text())
                .filter(s -> !s.isBlank()).collect(Collectors.joining(" "));
    }

    private static Headline of(StudyResult result, Comparison comparison) {
        int plan = comparison.plan();
        return new Headline(plan, new CostSentence(result).compared(comparison),
                routes(result, plan), ServiceSentence.of(result.plans().get(plan), result.input()), awards(result, plan));
    }

    private static Headline ofBaseline(StudyResult result) {
        int plan = result.input().baseline();
        return new Headline(plan, new CostSentence(result).alone(), routes(result, plan),
                ServiceSentence.of(result.baseline(), result.input()), awards(result, plan));
    }
}
