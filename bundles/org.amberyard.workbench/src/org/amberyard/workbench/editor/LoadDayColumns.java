package org.amberyard.workbench.editor;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.amberyard.core.units.Unit;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.meta.NumberSeries;
import org.amberyard.workbench.fields.ComputedColumn;
import org.amberyard.workbench.fields.ComputedFigure;
import org.eclipse.emf.ecore.EObject;

/** What is computed from the building's loads of a day and shown in place of their figures. */
final class LoadDayColumns {

    private LoadDayColumns() {
    }

    static List<ComputedColumn> all() {
        return List.of(
                new ComputedFigure(Messages.LoadDay_mean, Messages.LoadDay_mean_tip, Unit.KILOWATT, 1,
                        d -> figure(d, BuildingLoadDay::getMeanKw, s -> s.average().orElse(Double.NaN))),
                new ComputedFigure(Messages.LoadDay_peak, Messages.LoadDay_peak_tip, Unit.KILOWATT, 1,
                        d -> figure(d, BuildingLoadDay::getPeakDayKw, s -> s.max().orElse(Double.NaN))));
    }

    /** Damaged loads are named among the findings and have no figures. */
    private static double figure(EObject day, Function<BuildingLoadDay, String> loads, ToDoubleFunction<DoubleStream> figure) {
        try {
            return figure.applyAsDouble(Arrays.stream(NumberSeries.parse(loads.apply((BuildingLoadDay) day))));
        } catch (NumberFormatException damaged) {
            return Double.NaN;
        }
    }
}
