package org.amberyard.workbench.charts;

import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.amberyard.charts.AnnualCostChart;
import org.amberyard.charts.Chart;
import org.amberyard.charts.ChartTheme;
import org.amberyard.charts.CumulativeCostChart;
import org.amberyard.charts.RangeMarginChart;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.look.ViewChrome;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.Evaluation;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** A chart of the study in use. Which one stands behind the class name in the view's extension. */
public final class ChartView extends ViewPart implements IExecutableExtension {

    /** Makes a chart of results. */
    @FunctionalInterface
    private interface Maker {
        Chart of(StudyResult result, UnitSystem units, ChartTheme theme);
    }

    private static final Map<String, Maker> MAKERS = Map.of("annual", AnnualCostChart::of, "cumulative",
            CumulativeCostChart::of, "range", RangeMarginChart::of);

    private Maker maker;
    private ChartCanvas canvas;
    private StudyResult shownResult;
    private UnitSystem shownUnits;

    @Override
    public void setInitializationData(IConfigurationElement config, String propertyName, Object data) {
        super.setInitializationData(config, propertyName, data);
        maker = MAKERS.get(data);
    }

    @Override
    public void createPartControl(Composite parent) {
        ViewChrome.withoutToolbar(getSite());
        canvas = new ChartCanvas(parent);
        new ChartMenu(canvas);
        ActiveSession.here().follow(canvas, this::update);
    }

    private void update(Optional<StudySession> session) {
        if (session.isEmpty()) {
            shownResult = null;
            canvas.clear();
            canvas.say(Messages.Chart_noStudy);
            return;
        }
        Evaluation evaluation = session.get().evaluation();
        UnitSystem units = StudyUnits.of(session.get().study());
        Optional<StudyResult> result = evaluation.result().filter(r -> !r.input().buses().isEmpty());
        if (result.isPresent()) {
            show(result.get(), units);
        } else {
            shownResult = null;
            canvas.clear();
        }
        canvas.say(message(evaluation, result.isEmpty()));
    }

    private void show(StudyResult result, UnitSystem units) {
        if (result != shownResult || units != shownUnits) {
            shownResult = result;
            shownUnits = units;
            Supplier<Chart> source = () -> maker.of(result, units, ChartTheme.light());
            canvas.show(source);
        }
    }

    private static String message(Evaluation evaluation, boolean empty) {
        return switch (evaluation.phase()) {
            case CURRENT -> empty ? NLS.bind(Messages.Chart_nothing, Messages.Chart_noBuses) : "";
            case COMPUTING -> empty ? Messages.Chart_computing : "";
            case STALE -> NLS.bind(empty ? Messages.Chart_nothing : Messages.Chart_stale, evaluation.reason());
        };
    }

    @Override
    public void setFocus() {
        canvas.setFocus();
    }
}
