package org.amberyard.workbench.editor;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.amberyard.core.units.Unit;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.MeterDay;
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
                mean(d -> ((BuildingLoadDay) d).getMeanKw()),
                new ComputedFigure(Messages.LoadDay_peak, Messages.LoadDay_peak_tip, Unit.KILOWATT, 1,
                        d -> figure(((BuildingLoadDay) d).getPeakDayKw(), s -> s.max().orElse(Double.NaN))));
    }

    /** Of days by date. */
    static List<ComputedColumn> ofDates() {
        return List.of(mean(d -> ((MeterDay) d).getLoadKw()),
                new ComputedFigure(Messages.LoadDay_peak, Messages.MeterDay_peak_tip, Unit.KILOWATT, 1,
                        d -> figure(((MeterDay) d).getLoadKw(), s -> s.max().orElse(Double.NaN))));
    }

    private static ComputedColumn mean(Function<EObject, String> loads) {
        return new ComputedFigure(Messages.LoadDay_mean, Messages.LoadDay_mean_tip, Unit.KILOWATT, 1,
                d -> figure(loads.apply(d), s -> s.average().orElse(Double.NaN)));
    }

    /** Damaged loads are named among the findings and have no figures. */
    private static double figure(String loads, ToDoubleFunction<DoubleStream> figure) {
        try {
            return figure.applyAsDouble(Arrays.stream(NumberSeries.parse(loads)));
        } catch (NumberFormatException damaged) {
            return Double.NaN;
        }
    }
}
