package org.amberyard.workbench.session;

import java.util.function.Supplier;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.report.papers.ReadFigures;
import org.amberyard.report.papers.StudyFacts;
import org.eclipse.core.runtime.jobs.ISchedulingRule;

/**
 * Figures of narratives of the newest results, read in the background. It is the rule of the jobs that read them, so that they read one
 * after the other and none makes a table that another has made.
 */
public final class FigureReading implements ISchedulingRule {
    private ReadFigures read;

    FigureReading() {
    }

    /**
     * Figures of results, for a job of this rule; those of other results are forgotten.
     *
     * @param facts what documents say of the study of the results, where nobody has asked for them yet
     */
    public ReadFigures of(StudyResult result, Supplier<StudyFacts> facts) {
        if (read == null || !read.isOf(result)) {
            read = new ReadFigures(result, facts.get());
        }
        return read;
    }

    @Override
    public boolean contains(ISchedulingRule rule) {
        return rule == this;
    }

    @Override
    public boolean isConflicting(ISchedulingRule rule) {
        return rule == this;
    }
}
