package org.amberyard.study;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.plan.ActualYear;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.YearActuals;

/** Compiles what came of years that are over. */
final class ActualsCompiler {
    private ActualsCompiler() {
    }

    /** The years in their order. */
    static List<ActualYear> compile(Study study) {
        int baseYear = study.getSettings().getBaseYear();
        return study.getActuals().stream().sorted(Comparator.comparingInt(YearActuals::getYear))
                .map(a -> new ActualYear(a.getYear() - baseYear, known(a.getElectricityKwh()), known(a.getElectricityCost()),
                        known(a.getFuelL()), known(a.getFuelCost()), known(a.getUpkeepCost())))
                .toList();
    }

    private static OptionalDouble known(Double figure) {
        return figure == null ? OptionalDouble.empty() : OptionalDouble.of(figure);
    }
}
