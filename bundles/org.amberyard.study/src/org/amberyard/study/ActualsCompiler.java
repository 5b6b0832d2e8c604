package org.amberyard.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.plan.ActualYear;
import org.amberyard.core.plan.YearFigures;
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
                .map(a -> new ActualYear(a.getYear() - baseYear, came(a), Optional.ofNullable(a.getForeseenBy()).orElse(""), foreseen(a)))
                .toList();
    }

    private static YearFigures came(YearActuals of) {
        return new YearFigures(known(of.getElectricityKwh()), known(of.getElectricityCost()), known(of.getFuelL()), known(of.getFuelCost()),
                known(of.getUpkeepCost()));
    }

    private static YearFigures foreseen(YearActuals of) {
        return new YearFigures(known(of.getForeseenElectricityKwh()), known(of.getForeseenElectricityCost()), known(of.getForeseenFuelL()),
                known(of.getForeseenFuelCost()), known(of.getForeseenUpkeepCost()));
    }

    private static OptionalDouble known(Double figure) {
        return figure == null ? OptionalDouble.empty() : OptionalDouble.of(figure);
    }
}
