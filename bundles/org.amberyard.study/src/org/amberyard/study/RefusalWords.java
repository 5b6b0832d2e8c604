package org.amberyard.study;

import org.amberyard.core.consumption.FitRefusal;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.meta.ElementNames;

/** Says why a curve cannot be fitted, and what would help. */
final class RefusalWords {
    private RefusalWords() {
    }

    static String of(CurveFitting fitting, FitRefusal refusal) {
        RoundedText text = new RoundedText(fitting.study());
        return switch (refusal.cause()) {
            case TOO_FEW_ENTRIES -> ElementNames.of(fitting.type()) + " has " + Math.round(refusal.found())
                    + " usable consumption logs but a curve needs " + Math.round(refusal.needed()) + ".";
            case NOTHING_COLD -> "The coldest log is of " + text.of(Literals.CONSUMPTION_LOG__OUTSIDE_C, refusal.found())
                    + ", so nothing tells what cold takes; add logs of "
                    + text.of(Literals.CONSUMPTION_LOG__OUTSIDE_C, refusal.needed()) + " or colder.";
            case HOURS_UNKNOWN -> "No log tells its time in service, and heat counts per hour; enter the hours of some.";
            case SPEEDS_ALIKE -> "The logs were driven at nearly the same mean speed, so what cold takes per distance and "
                    + "heat per hour cannot be told apart; give the rise in the cold, or add logs of faster or slower work.";
            case TEMPERATURES_ALIKE -> "The temperatures of the logs lie too close together to tell base use, heat and "
                    + "cooling apart; add logs of other seasons.";
            case NO_BASE -> "The logs fit best to a bus that takes nothing to drive; check their energies, distances and "
                    + "hours.";
        };
    }
}
