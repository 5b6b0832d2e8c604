package org.amberyard.study;

import java.util.stream.Collectors;
import org.amberyard.core.plan.Remedy;
import org.amberyard.core.plan.StudyInput;

/** Says what a remedy is. */
public final class RemedyWords {
    private RemedyWords() {
    }

    /** The measures of a remedy, with the vehicle type or the route that it names. */
    public static String of(StudyInput study, Remedy remedy) {
        return remedy.measures().stream().map(measure -> of(study, remedy, measure)).collect(Collectors.joining(" and "));
    }

    private static String of(StudyInput study, Remedy remedy, Remedy.Measure measure) {
        return switch (measure) {
            case LARGER_PACK, KEEP_ENGINE -> measure.label() + ": " + study.types().get(remedy.type()).name();
            case SWAP_ROUTE -> measure.label() + ": " + study.duty().routes().get(remedy.swapRoute().orElseThrow()).name();
            case PRECONDITION, MIDDAY_CHARGE, FUEL_FIRED_HEAT -> measure.label();
        };
    }
}
