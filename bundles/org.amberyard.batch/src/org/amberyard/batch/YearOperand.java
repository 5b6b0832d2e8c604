package org.amberyard.batch;

import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyInput;

/** A year of a study as an operand. */
final class YearOperand {
    private YearOperand() {
    }

    /** Year counted from the base year. */
    static int of(StudyInput study, String year) throws WrongUse {
        return IntStream.range(0, study.years()).filter(y -> String.valueOf(study.baseYear() + y).equals(year)).findFirst()
                .orElseThrow(() -> new WrongUse("YEAR is “" + year + "”; it must be from " + study.baseYear() + " to "
                        + (study.baseYear() + study.years() - 1) + "."));
    }
}
