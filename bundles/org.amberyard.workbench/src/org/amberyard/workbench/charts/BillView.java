package org.amberyard.workbench.charts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.charts.Subject;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.report.ChosenBill;
import org.amberyard.report.ResultTable;
import org.amberyard.workbench.columns.ArrangedModel;
import org.amberyard.workbench.columns.ColumnMenu;
import org.amberyard.workbench.fields.CellMenu;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.look.ViewChrome;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.Choices.Chosen;
import org.amberyard.workbench.session.Choices.Kind;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.views.NoTable;
import org.amberyard.workbench.views.ResultModel;
import org.amberyard.workbench.views.ResultsView;
import org.amberyard.workbench.views.TableWork;
import org.amberyard.workbench.work.WorkStrip;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

/** A month's bill of a plan's last year, line by line, under any charging policy and on any tariff of the study. */
public final class BillView extends ViewPart {
    private static final List<Kind> CHOICES = List.of(Kind.PLAN, Kind.POLICY, Kind.TARIFF, Kind.MONTH);

    private ChoiceBar bar;
    private Grid grid;
    private Label state;
    private TableWork work;
    private WorkStrip strip;
    private StudySession session;
    private StudyResult result;
    private Subject plan;
    private Map<Kind, Chosen> wanted = Map.of();

    @Override
    public void createPartControl(Composite parent) {
        ViewChrome.withoutToolbar(getSite());
        Composite area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        area.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(area);
        bar = new ChoiceBar(area, CHOICES, (kind, what) -> session.choices().choose(kind, what), this::openInputs);
        bar.addButton(Messages.Bill_policies, Messages.Bill_policies_tip, () -> ResultsView.show(getSite().getPage(), "policy_bills"));
        bar.addButton(Messages.Bill_tariffs, Messages.Bill_tariffs_tip, () -> ResultsView.show(getSite().getPage(), "tariff_bills"));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar.area());
        state = new Label(area, SWT.NONE);
        state.setForeground(Palette.MUTED.color());
        GridDataFactory.fillDefaults().grab(true, false).indent(6, 0).applyTo(state);
        grid = new Grid(area, new NoTable());
        ColumnMenu.on(grid);
        CellMenu.ofReading(grid);
        GridDataFactory.fillDefaults().grab(true, true).hint(200, 60).applyTo(grid);
        strip = new WorkStrip(area, 1, this::stop, this::make);
        work = new TableWork(grid, new Lines());
        ActiveSession.here().follow(grid, this::update);
    }

    /** Shows the lines once they are made. */
    private final class Lines implements TableWork.Listener {
        @Override
        public void at(double share) {
            strip.at(share);
        }

        @Override
        public void done(ResultTable table) {
            strip.done();
            grid.renewModel(new ArrangedModel(new ResultModel(table), table.name()));
            grid.setFaded(false);
        }

        @Override
        public void failed(String why) {
            strip.done();
            clear(why);
        }
    }

    private void openInputs() {
        new Inputs(getSite().getPage()).open(session.study(), result.input(), plan, Optional.empty());
    }

    private void stop() {
        work.stop();
        strip.stopped();
    }

    private void update(Optional<StudySession> next) {
        session = next.orElse(null);
        StudyResult now = next.flatMap(s -> s.evaluation().result()).orElse(null);
        if (now == null) {
            result = null;
            work.stop();
            clear(session == null ? Messages.Chart_noStudy : Messages.Chart_computing);
            bar.disable();
            return;
        }
        if (now != result || !wanted.equals(session.choices().all())) {
            result = now;
            wanted = session.choices().all();
            make();
        }
    }

    private void make() {
        Picks picks = new Picks(result, session.choices(), CHOICES);
        plan = new Subject(Subject.Kind.PLAN, picks.place(Kind.PLAN));
        bar.show(picks, Inputs.label(result.input(), plan));
        int last = result.input().years() - 1;
        if (result.plans().get(picks.place(Kind.PLAN)).yards().get(last).input().buses().isEmpty()) {
            work.stop();
            clear(Messages.Bill_noElectric);
            return;
        }
        state.setText(NLS.bind(picks.policy() == ChargePolicy.CAPPED ? Messages.Bill_capped : Messages.Bill_of, result.input().baseYear() + last));
        grid.setFaded(true);
        StudyResult of = result;
        ChosenBill bill = new ChosenBill(picks.place(Kind.PLAN), picks.policy(), picks.place(Kind.TARIFF), picks.place(Kind.MONTH));
        work.make(progress -> bill.table(of));
    }

    private void clear(String why) {
        state.setText(why);
        grid.setModel(new NoTable());
    }

    @Override
    public void setFocus() {
        grid.setFocus();
    }
}
