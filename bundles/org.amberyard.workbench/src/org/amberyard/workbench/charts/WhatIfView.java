package org.amberyard.workbench.charts;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.charts.Chart;
import org.amberyard.charts.ChartTheme;
import org.amberyard.charts.WhatIfChart;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.DropList;
import org.amberyard.workbench.look.Theme;
import org.amberyard.workbench.look.ViewChrome;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.Choices.Kind;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.session.WhatIfStanding;
import org.amberyard.workbench.session.WhatIfWork;
import org.amberyard.workbench.views.StudyEditors;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.part.ViewPart;

/** A chart of the what-if of the study in use, and the way to run it. Which chart comes first stands behind the class name. */
public final class WhatIfView extends ViewPart implements IExecutableExtension {

    /** What is on show; results are told apart by identity. */
    private record Shown(WhatIfResults results, WhatIfChart kind, int plan, UnitSystem units, ChartTheme theme) {
    }

    private WhatIfChart kind;
    private LaterContent content;
    private WhatIfBar run;
    private Combo chooser;
    private ChoiceBar bar;
    private ChartCanvas canvas;
    private ChartNotes notes;
    private StudySession session;
    private Shown shown;

    @Override
    public void setInitializationData(IConfigurationElement config, String propertyName, Object data) {
        super.setInitializationData(config, propertyName, data);
        kind = WhatIfChart.valueOf(String.valueOf(data).toUpperCase(Locale.ROOT));
    }

    @Override
    public void createPartControl(Composite parent) {
        ViewChrome.withoutToolbar(getSite());
        content = new LaterContent(parent, this::makeContent);
    }

    private Control makeContent(Composite area) {
        area.setBackgroundMode(SWT.INHERIT_DEFAULT);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(6, 0).applyTo(area);
        run = new WhatIfBar(area);
        chooser = DropList.on(area);
        chooser.setItems(Arrays.stream(WhatIfChart.values()).map(WhatIfChart::label).map(Words::say).toArray(String[]::new));
        chooser.setVisibleItemCount(WhatIfChart.values().length);
        chooser.setToolTipText(Messages.WhatIf_chart_tip);
        chooser.select(kind.ordinal());
        chooser.addListener(SWT.Selection, e -> choose(WhatIfChart.values()[chooser.getSelectionIndex()]));
        GridDataFactory.swtDefaults().applyTo(chooser);
        bar = new ChoiceBar(area, List.of(Kind.PLAN), (choice, what) -> session.choices().choose(choice, what), this::openInputs);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar.area());
        run.addProgress(area, 3);
        canvas = new ChartCanvas(area);
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).applyTo(canvas);
        notes = new ChartNotes(canvas, () -> session);
        new ChartMenu(canvas, notes, () -> chart(shown, Theme.LIGHT.charts()));
        ActiveSession.here().follow(canvas, this::update);
        return canvas;
    }

    private void choose(WhatIfChart next) {
        kind = next;
        if (session != null) {
            show();
        }
    }

    private void openInputs() {
        StudyEditors.show(getSite().getPage(), PageKind.WHAT_IF);
    }

    private static Chart chart(Shown of, ChartTheme theme) {
        return SpokenChart.of(of.kind().of(of.results(), of.plan(), of.units(), theme));
    }

    private void update(Optional<StudySession> next) {
        session = next.orElse(null);
        run.show(next.map(StudySession::whatIf));
        if (session == null) {
            clear(Messages.Chart_noStudy);
        } else {
            show();
        }
    }

    private void show() {
        WhatIfWork work = session.whatIf();
        Optional<WhatIfResults> results = work.results();
        if (results.isEmpty()) {
            clear(WhatIfBar.why(session, work));
            return;
        }
        Picks picks = new Picks(results.get().base(), session.choices(), List.of(Kind.PLAN));
        bar.show(picks, Messages.WhatIf_inputs);
        Shown next = new Shown(results.get(), kind, picks.place(Kind.PLAN), StudyUnits.of(session.study()),
                Theme.shown().charts());
        if (shown == null || shown.results() != next.results() || shown.kind() != next.kind() || shown.plan() != next.plan()
                || shown.units() != next.units() || shown.theme() != next.theme()) {
            shown = next;
            canvas.show(progress -> chart(next, next.theme()));
        }
        notes.show(picks.names(List.of(Kind.PLAN)));
        canvas.say(WhatIfStanding.of(session));
    }

    private void clear(String why) {
        shown = null;
        canvas.clear();
        canvas.say(why);
        bar.disable();
    }

    @Override
    public void setFocus() {
        content.setFocus();
    }
}
