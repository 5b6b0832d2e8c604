package org.amberyard.report;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.amberyard.core.plan.CoverYear;
import org.amberyard.core.plan.RouteAnswer;
import org.amberyard.core.plan.StudyResult;

/** Says which routes go electric in a plan and whether they can, under the study's charging habit. */
final class RouteSentence {
    private final List<RouteAnswer> answers;
    private final boolean midday;
    private final StudyResult result;
    private final int plan;

    RouteSentence(StudyResult result, int plan) {
        this.result = result;
        this.plan = plan;
        this.answers = RouteAnswer.of(result, plan);
        this.midday = result.input().middayCharging();
    }

    String text() {
        if (answers.isEmpty()) {
            return "The study has no routes, so no range is judged.";
        }
        long electric = count(RouteAnswer::electric);
        return electric == 0 ? none() : some(electric) + others() + ".";
    }

    /** Routes that have no bus make a plan look cheap; blank where all have one. */
    String undriven() {
        List<CoverYear> years = result.covers().get(plan);
        String without = years.stream().flatMap(y -> y.undriven().stream()).distinct().sorted()
                .map(route -> result.input().duty().routes().get(route).name() + " from " + years.stream().filter(y -> y.undriven().contains(route))
                        .mapToInt(y -> result.input().baseYear() + y.year()).min().orElseThrow())
                .collect(Collectors.joining(", "));
        return without.isEmpty() ? "" : "Without a bus: " + without + "; the plan costs less than what is to be driven.";
    }

    private String none() {
        long possible = count(this::servable);
        return (answers.size() == 1 ? "The only route does not go electric" : "None of the " + answers.size()
                + " routes goes electric") + " in this plan; "
                + (possible == 0 ? "no electric bus listed could serve any of them"
                        : counted(possible) + " could be served by an electric bus listed")
                + " on the worst operated day.";
    }

    private String some(long electric) {
        String start = "Of " + plural(answers.size()) + ", " + electric + (electric == 1 ? " goes" : " go")
                + " electric in this plan";
        long unjudged = count(a -> a.electric() && a.fit().isEmpty());
        long fails = count(a -> a.electric() && a.fit().isPresent() && !a.passesNew(midday));
        long agedFails = count(a -> a.electric() && a.passesNew(midday) && !a.passesAged(midday));
        String judged = start + unjudgedPart(unjudged);
        if (unjudged == electric) {
            return judged;
        }
        String habit = midday ? ". Charged overnight and between runs, " : ". Charged overnight, ";
        return judged + habit + passing(electric - unjudged - fails, electric - unjudged, agedFails, unjudged > 0);
    }

    private static String passing(long passing, long judged, long agedFails, boolean othersUnjudged) {
        String them = othersUnjudged ? "those that can be judged" : "them";
        String one = othersUnjudged ? "the one that can be judged" : "it";
        String all = judged == 1 ? one : "all of " + them;
        if (passing == 0) {
            return all + (judged == 1 ? " fails" : " fail") + " the worst operated day even with a new pack";
        }
        String who = passing == judged ? all : "only " + passing + " of " + them;
        String day = who + (passing == 1 ? " manages" : " manage") + " the worst operated day";
        if (agedFails == 0) {
            return day + ", with a new pack and with an aged one";
        }
        String fails = (passing == judged ? ", but " : ", and ") + agedFails + (passing == judged ? "" : " more");
        return day + " with a new pack" + fails + (agedFails == 1 ? " fails" : " fail") + " once the pack has aged";
    }

    private static String unjudgedPart(long unjudged) {
        if (unjudged == 0) {
            return "";
        }
        return unjudged == 1 ? ", 1 has no run or a bus of another body type and cannot be judged"
                : ", " + unjudged + " have no run or a bus of another body type and cannot be judged";
    }

    private String others() {
        long others = count(a -> !a.electric());
        long hopeless = count(a -> !a.electric() && !servable(a));
        if (others == 0) {
            return "";
        }
        return hopeless == 0 ? "; " + (others == 1 ? "the other one" : "each of the others")
                + " could be served by an electric bus listed"
                : "; " + hopeless + " of the others cannot be served by any electric bus listed";
    }

    private boolean servable(RouteAnswer answer) {
        return result.fits().list().stream().anyMatch(f -> f.route() == answer.route() && f.whenNew(midday).passes());
    }

    private long count(Predicate<RouteAnswer> which) {
        return answers.stream().filter(which).count();
    }

    private String counted(long routes) {
        return routes == answers.size() ? routes == 1 ? "it" : "all of them" : routes + " of them";
    }

    private static String plural(int routes) {
        return routes == 1 ? "1 route" : routes + " routes";
    }
}
