package org.amberyard.report;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;

/**
 * The answer for one plan in words.
 *
 * @param plan place of the plan in the study
 * @param cost what it costs against the baseline, when it pays back and what it does to the air
 * @param routes which routes go electric and whether they can
 * @param service whether the electric service carries it
 */
public record Headline(int plan, String cost, String routes, String service) {

    /** One headline for each plan that is compared with the baseline, or one for the baseline when it stands alone. */
    public static List<Headline> of(StudyResult result, UnitSystem system) {
        return result.comparisons().isEmpty() ? List.of(ofBaseline(result))
                : result.comparisons().stream().map(c -> of(result, c)).toList();
    }

    /** The three sentences as one paragraph. */
    public String text() {
        return String.join(" ", sentences());
    }

    /** The three sentences. */
    public List<String> sentences() {
        return Stream.of(cost, routes, service).toList();
    }

    private static Headline of(StudyResult result, Comparison comparison) {
        int plan = comparison.plan();
        return new Headline(plan, new CostSentence(result).compared(comparison),
                new RouteSentence(result, plan).text(), ServiceSentence.of(result.plans().get(plan), result.input()));
    }

    private static Headline ofBaseline(StudyResult result) {
        int plan = result.input().baseline();
        return new Headline(plan, new CostSentence(result).alone(), new RouteSentence(result, plan).text(),
                ServiceSentence.of(result.baseline(), result.input()));
    }
}
