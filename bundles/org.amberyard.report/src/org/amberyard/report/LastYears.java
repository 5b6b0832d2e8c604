package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.yard.YardDetail;
import org.amberyard.core.yard.YardInput;
import org.amberyard.core.yard.YardYear;
import org.amberyard.report.ResultRows.OfYear;

/** The last year of each plan that charges anything, with loads by step; planned once for the tables of a result. */
final class LastYears {
    private StudyResult known;
    private List<LastYear> years;

    /** The last year of a plan. */
    record LastYear(OfYear at, YardDetail yard) {
        PlanResult plan() {
            return at.plan();
        }

        StudyResult result() {
            return at.result();
        }

        YardInput input() {
            return yard.year().input();
        }
    }

    synchronized List<LastYear> of(StudyResult result) {
        if (result != known) {
            years = found(result);
            known = result;
        }
        return years;
    }

    private static List<LastYear> found(StudyResult result) {
        List<LastYear> found = new ArrayList<>();
        int last = result.input().years() - 1;
        for (PlanResult plan : result.plans()) {
            YardYear year = plan.yards().get(last);
            if (charges(year)) {
                found.add(new LastYear(new OfYear(result, plan, last), YardDetail.of(year, plan.yardComparison().memory())));
            }
        }
        return found;
    }

    /** True when a yard has electric buses or ports. */
    static boolean charges(YardYear year) {
        return !year.input().buses().isEmpty() || !year.input().ports().isEmpty();
    }
}
