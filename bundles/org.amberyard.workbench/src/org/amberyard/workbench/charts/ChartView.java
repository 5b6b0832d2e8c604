package org.amberyard.workbench.charts;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.amberyard.charts.Chart;
import org.amberyard.charts.ChartTheme;
import org.amberyard.charts.Subject;
import org.amberyard.charts.YardLoads;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.look.Theme;
import org.amberyard.workbench.look.ViewChrome;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.Choices.Chosen;
import org.amberyard.workbench.session.Choices.Kind;
import org.amberyard.workbench.session.Evaluation;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.views.ResultsView;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;

/** A chart of the study in use, with what is to be chosen for it. Which one stands behind the class name in its extension. */
public final class ChartView extends ViewPart implements IExecutableExtension {

    /** What is on show; results are told apart by identity, since comparing them whole takes long. */
    private record Shown(StudyResult result, UnitSystem units, ChartTheme theme, Map<Kind, Chosen> wanted, Picks picks) {
        boolean isOf(StudyResult of, UnitSystem in, ChartTheme with, Map<Kind, Chosen> chosen) {
            return result == of && units == in && theme == with && wanted.equals(chosen);
        }
    }

    private final YardLoads loads = new YardLoads();
    private ChartKind kind;
    private LaterContent content;
    private ChoiceBar bar;
    private YearSlider slider;
    private ChartCanvas canvas;
    private ChartNotes notes;
    private StudySession session;
    private Shown shown;

    @Override
    public void setInitializationData(IConfigurationElement config, String propertyName, Object data) {
        super.setInitializationData(config, propertyName, data);
        kind = ChartKind.valueOf(String.valueOf(data).toUpperCase(Locale.ROOT));
    }

    @Override
    public void createPartControl(Composite parent) {
        ViewChrome.withoutToolbar(getSite());
        content = new LaterContent(parent, this::makeContent);
    }

    private Control makeContent(Composite area) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(area);
        if (!kind.choices().isEmpty()) {
            bar = new ChoiceBar(area, kind.choices(), this::chosen, this::openInputs);
            GridDataFactory.fillDefaults().grab(true, false).applyTo(bar.area());
        }
        canvas = new ChartCanvas(area);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
        if (kind.choices().contains(Kind.YEAR)) {
            slider = new YearSlider(area, this::chosen, canvas::isUnderWay);
        }
        canvas.addStrip(area);
        notes = new ChartNotes(canvas, () -> session);
        ChartMenu menu = new ChartMenu(canvas, notes, this::onPaper);
        if (kind.ofTheShop()) {
            menu.addTaskSheet(getSite().getService(IHandlerService.class));
        }
        kind.outage().ifPresent(table -> {
            Runnable show = () -> ResultsView.show(getSite().getPage(), table);
            bar.addButton(Messages.Outage_button, Messages.Outage_tip, show);
            menu.add(Messages.Menu_outage, show);
        });
        if (bar != null) {
            canvas.onOpen(this::open);
            new InputsMenu(canvas, this::label, this::open);
        }
        ActiveSession.here().follow(canvas, this::update);
        return canvas;
    }

    /** The chart on show as it leaves the window: on white, whatever the window is. */
    private Chart onPaper() {
        return shown.theme() == Theme.LIGHT.charts() ? canvas.chart().orElseThrow()
                : chart(shown, Theme.LIGHT.charts(), Progress.NONE);
    }

    private Chart chart(Shown of, ChartTheme theme, Progress progress) {
        return SpokenChart.of(kind.chart(of.result(), of.picks(), loads, of.units(), theme, progress));
    }

    private void chosen(Kind choice, Chosen what) {
        session.choices().choose(choice, what);
    }

    private String label(Subject subject) {
        return kind.field().map(field -> Inputs.label(shown.result().input(), subject, field))
                .orElseGet(() -> Inputs.label(shown.result().input(), subject));
    }

    private void openInputs() {
        kind.inputs(shown.picks()).ifPresent(this::open);
    }

    private void open(Subject subject) {
        if (!new Inputs(getSite().getPage()).open(session.study(), shown.result().input(), subject, kind.field())) {
            String name = Inputs.name(shown.result().input(), subject);
            getViewSite().getActionBars().getStatusLineManager().setErrorMessage(NLS.bind(Messages.Inputs_gone, name));
        }
    }

    private void update(Optional<StudySession> next) {
        session = next.orElse(null);
        if (session == null) {
            clear(Messages.Chart_noStudy);
            return;
        }
        Evaluation evaluation = session.evaluation();
        Optional<StudyResult> result = evaluation.result().filter(r -> !r.input().buses().isEmpty());
        if (result.isEmpty()) {
            clear(message(evaluation, Optional.of(Messages.Chart_noBuses)));
            return;
        }
        update(result.get(), StudyUnits.of(session.study()));
        notes.show(shown.picks().names(kind.choices()));
        canvas.say(message(evaluation, lacking(shown.picks())));
        canvas.setOutdated(evaluation.isOutdated());
    }

    private void update(StudyResult result, UnitSystem units) {
        Map<Kind, Chosen> wanted = session.choices().all();
        ChartTheme theme = Theme.shown().charts();
        if (shown != null && shown.isOf(result, units, theme, wanted)) {
            return;
        }
        Shown last = shown;
        shown = new Shown(result, units, theme, wanted, new Picks(result, session.choices(), kind.choices()));
        if (lacking(shown.picks()).isPresent()) {
            canvas.clear();
        } else if (last == null || last.result() != result || last.units() != units || last.theme() != theme || !samePicks(last, shown)) {
            Shown next = shown;
            canvas.show(progress -> chart(next, next.theme(), progress));
        }
        offer();
    }

    private Optional<String> lacking(Picks picks) {
        return picks.missing(kind.choices()).map(ChoiceWords::missing);
    }

    private boolean samePicks(Shown one, Shown other) {
        return kind.choices().stream().allMatch(k -> one.picks().place(k) == other.picks().place(k));
    }

    private void clear(String why) {
        shown = null;
        canvas.clear();
        canvas.say(why);
        if (bar != null) {
            bar.disable();
        }
        if (slider != null) {
            slider.disable();
        }
    }

    private void offer() {
        if (bar != null) {
            bar.show(shown.picks(),
                    kind.inputs(shown.picks()).map(this::label).orElse(""));
        }
        if (slider != null) {
            slider.show(shown.picks());
        }
    }

    private static String message(Evaluation evaluation, Optional<String> lacking) {
        return switch (evaluation.phase()) {
            case CURRENT -> lacking.map(why -> NLS.bind(Messages.Chart_nothing, why)).orElse("");
            case COMPUTING -> lacking.isPresent() || evaluation.late() ? Messages.Chart_computing : "";
            case STALE -> NLS.bind(lacking.isPresent() ? Messages.Chart_nothing : Messages.Chart_stale, evaluation.reason());
        };
    }

    @Override
    public void setFocus() {
        content.setFocus();
    }
}
