package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.yard.YardMemory;

/** Evaluates a study: duty, route fits, plans, comparisons, cover of trips and routes; one way through. */
public final class StudyEvaluation {
    private StudyEvaluation() {
    }

    /**
     * Results of a study.
     *
     * @param study the input
     * @param duty the duty table of {@code study.duty()}, computed now or kept from an earlier evaluation
     * @throws IllegalArgumentException when the table belongs to another duty
     */
    public static StudyResult of(StudyInput study, DutyTable duty) {
        return of(study, new TripDrives(duty), new YardMemory(), Progress.NONE);
    }

    /**
     * Results of a study, with the days of trips and the years of yards that are known from earlier evaluations.
     *
     * @param study the input
     * @param drives days of trips, on the duty table of {@code study.duty()}
     * @param yards years of yards
     * @param progress hears how far it is
     * @throws IllegalArgumentException when the table belongs to another duty
     * @throws CancellationException when the progress throws it
     */
    public static StudyResult of(StudyInput study, TripDrives drives, YardMemory yards, Progress progress) {
        DutyTable duty = drives.duty();
        if (!duty.input().equals(study.duty())) {
            throw new IllegalArgumentException("The duty table was computed from another duty");
        }
        RouteFits fits = RouteFitting.of(study, duty);
        StudyFigures figures = StudyFigures.of(study, duty);
        List<PlanResult> plans = new ArrayList<>();
        for (PlanInput plan : study.plans()) {
            plans.add(PlanEvaluation.of(study, plan, duty, figures, fits, yards, progress.part(plans.size(), study.plans().size())));
        }
        int lastYear = study.years() - 1;
        drives.keepOnly(study.trips());
        return new StudyResult(study, duty, figures, fits, plans,
                plans.stream().map(p -> TripCover.of(study, p, lastYear, drives)).toList(),
                plans.stream().map(p -> SpareCover.of(study, duty, p, lastYear)).toList());
    }
}
