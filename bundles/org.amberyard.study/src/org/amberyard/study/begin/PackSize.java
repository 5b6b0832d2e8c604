package org.amberyard.study.begin;

import java.util.List;
import org.amberyard.core.plan.RouteAnswer;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;

/** The pack that a begun study assumes: the smallest on offer with which a bus does its day on the coldest day when it is aged. */
final class PackSize {
    static final String SOURCE = "the smallest of a range of packs that does the day on the coldest day when aged, charged overnight; replace by the "
            + "maker's offer";
    /** Packs of school buses on offer, kWh; common practice, no source. */
    private static final double[] ON_OFFER_KWH = {90, 120, 150, 180, 210, 240, 280, 320, 380};
    private static final int YEARS = 2;

    private PackSize() {
    }

    /** The smallest that does; the largest on offer where none does, and then the results say so. */
    static double kwh(Answers answers, Answers.Bodies bodies) {
        Answers.Fleet fleet = answers.fleet();
        Answers one = new Answers(answers.name(), answers.units(), answers.baseYear(),
                new Answers.Fleet(List.of(new Answers.Bodies(bodies.type(), 1, 0, bodies.engineBus(), bodies.electricBus())), fleet.oldestYear(),
                        fleet.newestYear()),
                answers.day(), answers.weather(),
                answers.prices(), answers.baseYear() + 1);
        int size = 0;
        while (size < ON_OFFER_KWH.length - 1 && !does(one, ON_OFFER_KWH[size])) {
            size++;
        }
        return ON_OFFER_KWH[size];
    }

    private static boolean does(Answers one, double packKwh) {
        Study study = BeginStudy.with(one, b -> packKwh);
        study.getSettings().setHorizonYears(YEARS);
        StudyResult result = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
        return RouteAnswer.of(result, 1).get(0).passesAged(false);
    }
}
