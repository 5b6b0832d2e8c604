package org.amberyard.workbench.charts;

import java.util.Optional;
import org.amberyard.charts.CurveFitChart;
import org.amberyard.core.consumption.ConsumptionCurve;
import org.amberyard.core.consumption.CurveFit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.study.CurveFitting;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.look.Theme;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The chart of a fitted consumption curve. */
public final class CurveFitPane {
    private final ChartCanvas canvas;

    /** A pane without a chart yet. */
    public CurveFitPane(Composite parent) {
        canvas = new ChartCanvas(parent);
    }

    /** The control, for its place. */
    public Control control() {
        return canvas;
    }

    /** Shows a fit; nothing where there is none. */
    public void show(CurveFitting fitting) {
        if (fitting.fit().isEmpty()) {
            canvas.clear();
            return;
        }
        CurveFit fit = fitting.fit().get();
        String type = ElementNames.of(fitting.type());
        Optional<ConsumptionCurve> before = fitting.before();
        UnitSystem units = StudyUnits.of(fitting.study());
        canvas.show(progress -> SpokenChart.of(CurveFitChart.of(type, fit, before, units, Theme.shown().charts())));
    }

    /** Says something in place of the chart; blank for nothing. */
    public void say(String words) {
        canvas.say(words);
    }
}
