package org.amberyard.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.charts.Figures;
import org.amberyard.core.plan.PlanDifference;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;

/** Says what an edit has done to the present cost of a plan, and by which categories. */
public final class ChangeSentence {

    private static final int MOST_NAMED = 3;
    /** Below half a unit of money a change is none. */
    private static final double SAME = 0.5;

    /** What has changed the study, as sentences begin with it. */
    public enum Cause {
        /** An edit. */
        LAST_EDIT("By the last edit", "The last edit"),
        /** Something that a sentence before has named. */
        THIS("By this", "This");

        private final String by;
        private final String subject;

        Cause(String by, String subject) {
            this.by = by;
            this.subject = subject;
        }
    }

    private ChangeSentence() {
    }

    /**
     * The sentence for a plan.
     *
     * @param before results before the edit
     * @param after results after it
     * @param plan place of the plan in the results after it
     * @param cause what the edit is called
     * @return empty where the plan is new or the money is another
     */
    public static Optional<String> of(StudyResult before, StudyResult after, int plan, Cause cause) {
        PlanResult now = after.plans().get(plan);
        boolean comparable = before.input().currency().equals(after.input().currency());
        return comparable ? was(before, after, plan).map(then -> words(cause, now.name(), after.input().currency(),
                PlanDifference.of(then, now))) : Optional.empty();
    }

    /** A plan is found by its name; one that has been renamed by its place, as long as there are as many plans as before. */
    private static Optional<PlanResult> was(StudyResult before, StudyResult after, int plan) {
        String name = after.plans().get(plan).name();
        Optional<PlanResult> named = before.plans().stream().filter(p -> p.name().equals(name)).findFirst();
        boolean sameNumber = before.plans().size() == after.plans().size();
        return named.isPresent() || !sameNumber ? named : Optional.of(before.plans().get(plan));
    }

    private static String words(Cause cause, String plan, String currency, PlanDifference difference) {
        double change = difference.to() - difference.from();
        List<PlanDifference.Step> steps = difference.steps().stream().filter(s -> Math.abs(s.change()) >= SAME)
                .sorted(Comparator.comparingDouble((PlanDifference.Step s) -> -Math.abs(s.change()))).toList();
        if (Math.abs(change) < SAME && steps.isEmpty()) {
            return cause.subject + " left the cost of “" + plan + "” as it was.";
        }
        String whole = Math.abs(change) < SAME ? "costs as much as before"
                : "costs " + Figures.exactMoney(currency, Math.abs(change)) + (change > 0 ? " more" : " less");
        return cause.by + " “" + plan + "” " + whole + ": " + parts(steps) + ".";
    }

    /** What is not named is summed up as the rest, so that the parts make the whole. */
    private static String parts(List<PlanDifference.Step> steps) {
        int named = steps.size() <= MOST_NAMED + 1 ? steps.size() : MOST_NAMED;
        String words = IntStream.range(0, named).mapToObj(steps::get)
                .map(s -> Figures.signed(s.change()) + " " + s.category().label().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
        double rest = steps.stream().skip(named).mapToDouble(PlanDifference.Step::change).sum();
        return named == steps.size() ? words : words + ", " + Figures.signed(rest) + " other";
    }
}
