package org.amberyard.workbench.compare;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.amberyard.report.papers.Assumptions;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.columns.ArrangedModel;
import org.amberyard.workbench.columns.ColumnMenu;
import org.amberyard.workbench.fields.CellMenu;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.language.Counted;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.look.ViewChrome;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;

/** Plans side by side with what differs tinted: figures, inputs, and those of another study file. */
public final class CompareView extends ViewPart {

    /** Its id. */
    public static final String ID = "org.amberyard.workbench.compare";

    private CompareBar bar;
    private Grid grid;
    private StudySession session;
    private StudyResult shownResult;
    private UnitSystem shownUnits;
    private int shownRevision = -1;
    private boolean hidden;
    private CompareBar.What shown;
    private Evaluated here;
    private Evaluated there;
    private Job making;

    @Override
    public void createPartControl(Composite parent) {
        ViewChrome.withoutToolbar(getSite());
        Composite area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        area.setBackgroundMode(SWT.INHERIT_DEFAULT);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(8, 4).applyTo(area);
        bar = new CompareBar(area, () -> grid.rearrange(this::show), this::compareWith);
        grid = new Grid(area, new CompareModel(Compared.NOTHING, false, ""));
        ColumnMenu.on(grid);
        grid.onFilter(bar::goToSearch);
        CellMenu.ofReading(grid).add(ColumnMenu.TEXT, ColumnMenu::choose);
        GridDataFactory.fillDefaults().grab(true, true).hint(200, 60).applyTo(grid);
        grid.addListener(SWT.Paint, e -> seen());
        ActiveSession.here().follow(grid, this::update);
    }

    /** Shows the figures of all plans in the window in use. */
    public static void open() {
        open(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage());
    }

    /** Shows the figures of all plans on a page of the window. */
    public static void open(IWorkbenchPage page) {
        try {
            ((CompareView) page.showView(ID)).bar.choose(CompareBar.What.FIGURES);
        } catch (PartInitException e) {
            throw new IllegalStateException(e);
        }
    }

    private void update(Optional<StudySession> active) {
        if (active.orElse(null) != session) {
            session = active.orElse(null);
            there = null;
            here = null;
            shownResult = null;
        }
        StudyResult result = active.flatMap(s -> s.evaluation().result()).orElse(null);
        UnitSystem units = active.map(s -> StudyUnits.of(s.study())).orElse(UnitSystem.US);
        grid.setFaded(active.filter(s -> s.evaluation().isOutdated()).isPresent());
        int revision = active.map(StudySession::revision).orElse(-1);
        boolean edited = revision != shownRevision;
        shownRevision = revision;
        if (result != shownResult || units != shownUnits) {
            shownResult = result;
            shownUnits = units;
            make();
        } else if (edited && bar.what() != CompareBar.What.FIGURES && grid.isVisible()) {
            show();
        }
    }

    /** Figures are made in the background, and only for a view that is seen. */
    private void make() {
        hidden = !grid.isVisible();
        if (making != null) {
            making.cancel();
        }
        if (hidden || shownResult == null) {
            show();
            return;
        }
        StudyResult result = shownResult;
        UnitSystem units = shownUnits;
        Study study = session.study();
        String name = session.title();
        Assumptions assumptions = Assumptions.of(study);
        making = Job.createSystem(Messages.Compare_making, (ICoreRunnable) monitor -> {
            Evaluated made = Evaluated.of(name, study, result, units, assumptions);
            grid.getDisplay().asyncExec(() -> {
                if (!grid.isDisposed() && result == shownResult && units == shownUnits) {
                    here = made;
                    show();
                }
            });
        });
        making.schedule();
    }

    private void seen() {
        if (hidden) {
            make();
        }
    }

    private void show() {
        bar.other(there == null ? "" : there.name());
        Compared compared = compared();
        CompareModel model = new CompareModel(compared, bar.isOnlyDifferent(), bar.search());
        ArrangedModel table = new ArrangedModel(model, "compare " + bar.what());
        if (bar.what() == shown) {
            grid.renewModel(table);
        } else {
            shown = bar.what();
            grid.setModel(table);
        }
        bar.stamp(here == null ? "" : there == null ? Words.say(here.assumptions().words())
                : Words.say(here.assumptions().against(there.assumptions(), there.name())));
        bar.say(here == null ? Messages.Compare_none
                : NLS.bind(Counted.of(compared.rows().size(), Messages.Compare_countOne, Messages.Compare_count), model.rows(), compared.rows().size()));
    }

    private Compared compared() {
        if (here == null) {
            return Compared.NOTHING;
        }
        Study study = session.study();
        return switch (bar.what()) {
            case FIGURES -> Compared.figures(here, there);
            case PLANS -> Compared.inputs(study.getPlans().stream().map(Plan::getName).toList(), study.getPlans(), study);
            case STUDIES -> there == null ? Compared.NOTHING
                    : Compared.inputs(List.of(here.name(), there.name()), List.of(study, there.study()), study);
        };
    }

    /** Sets another study beside this one. */
    public void compareWith(Path file) {
        bar.say(NLS.bind(Messages.Compare_reading, file.getFileName()));
        new OtherStudy(file, shownUnits, (other, why) -> grid.getDisplay().asyncExec(() -> {
            if (!grid.isDisposed()) {
                there = other == null ? there : other;
                show();
                if (other == null) {
                    bar.say(why);
                }
            }
        })).schedule();
    }

    @Override
    public void setFocus() {
        grid.setFocus();
    }
}
