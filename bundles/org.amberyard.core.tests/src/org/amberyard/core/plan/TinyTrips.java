package org.amberyard.core.plan;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.SampleBus;

/** The tiny district with trips in January, its electric buses with a pack of a size. */
final class TinyTrips {
    private TinyTrips() {
    }

    static TripInput trip(ServiceDay day, double departureMin, double hours, double km) {
        return new TripInput("T", "away game", LocalDate.of(2026, 1, 14), day, departureMin, hours, km, "C", 40, 1,
                OptionalInt.empty());
    }

    static StudyInput study(double packKwh, TripInput... trips) {
        return withTrips(TinyPacks.withPack(TinyDistrict.study(),
                SampleBus.battery(packKwh, 0.004, 2000, 0.7, new LinearFade(0.01, 0))), trips);
    }

    static StudyInput withTrips(StudyInput study, TripInput... trips) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), study.buses(), study.depot(), study.prices(), study.funding(), study.air(), study.rules(),
                study.plans(), study.baseline(), List.of(trips));
    }

    static StudyResult evaluated(StudyInput study) {
        return StudyEvaluation.of(study, DutyTable.of(study.duty()));
    }

    /** Verdicts on the first trip by place. */
    static List<TripVerdict> verdicts(TripCover cover) {
        return cover.answers().get(0).places().stream().map(TripCover.Place::verdict).toList();
    }

    /** Places that can cover the first trip, in their order of preference. */
    static List<Integer> able(TripCover cover) {
        return cover.answers().get(0).able().stream().map(TripCover.Place::place).toList();
    }

    /** The tiny district's electric plan with more steps. */
    static PlanInput electricPlanAnd(PlanInput.Replacement... steps) {
        PlanInput plan = TinyDistrict.electricPlan();
        return new PlanInput(plan.name(), Stream.concat(plan.replacements().stream(), Arrays.stream(steps)).toList(),
                plan.ports(), plan.works(), plan.oneOffs());
    }
}
