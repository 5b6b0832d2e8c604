package org.amberyard.charts;

import org.amberyard.core.money.FiscalYears;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.plan.StudyInput;

/** Names the money in which a study states its yearly amounts. */
public final class StatedMoney {
    private StatedMoney() {
    }

    /** For example {@code constant 2026 USD} or {@code nominal USD}. */
    public static String of(StudyInput study) {
        FiscalYears fiscal = study.money().fiscal();
        return study.money().basis() == MoneyBasis.CONSTANT ? "constant " + fiscal.name(study.baseYear()) + " " + study.currency()
                : "nominal " + study.currency();
    }

    /** Money of a present cost, for example {@code present 2026 USD}. */
    static String present(StudyInput study) {
        return "present " + study.money().fiscal().name(study.baseYear()) + " " + study.currency();
    }
}
