package org.amberyard.workbench.measurements;

import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.report.CurveChangeTable;
import org.amberyard.report.ResidualTable;
import org.amberyard.report.ResultTable;
import org.amberyard.study.CurveFitting;
import org.amberyard.study.CurveLogs;
import org.amberyard.study.CurveWords;
import org.amberyard.study.CurveWriter;
import org.amberyard.workbench.charts.CurveFitPane;
import org.amberyard.workbench.fields.FieldRefusal;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.SizedDialog;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.views.ResultModel;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;
import org.eclipse.swt.widgets.Text;

/**
 * Shows the curve that fits the logs of a type, how well it does, what it makes of every log and what it would change; accepting writes
 * it, rejecting changes nothing.
 */
public final class FitCurveDialog extends SizedDialog {

    private static final Point SIZE = new Point(1000, 720);

    private final StudySession session;
    private final List<ElectricType> types;
    private FitForm form;
    private LogChooser choice;
    private UseForRoutes use;
    private Text words;
    private CurveFitPane chart;
    private Grid changes;
    private Grid residuals;
    private FitJob job;
    private CurveFitting shown;

    /** @param types electric types that have logs; at least one */
    public FitCurveDialog(Shell parent, StudySession session, List<ElectricType> types) {
        super(parent, Messages.Fit_title, SIZE);
        this.session = session;
        this.types = List.copyOf(types);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        form = new FitForm(area, session.study(), types, this::refit);
        choice = new LogChooser(area, session.study(), this::refit);
        SashForm parts = new SashForm(area, SWT.VERTICAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(parts);
        SashForm above = new SashForm(parts, SWT.HORIZONTAL | SWT.SMOOTH);
        words = new Text(above, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        chart = new CurveFitPane(above);
        above.setWeights(2, 3);
        TabFolder tables = new TabFolder(parts, SWT.NONE);
        changes = table(tables, CurveChangeTable.NONE);
        residuals = table(tables, ResidualTable.NONE);
        parts.setWeights(3, 2);
        use = new UseForRoutes(area, session.study(), this::ready);
        return area;
    }

    private static Grid table(TabFolder tables, ResultTable empty) {
        Grid grid = new Grid(tables, new ResultModel(empty));
        TabItem tab = new TabItem(tables, SWT.NONE);
        tab.setText(Words.say(empty.title()));
        tab.setControl(grid);
        return grid;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.Fit_accept, true).setToolTipText(Messages.Fit_accept_tip);
        createButton(parent, IDialogConstants.CANCEL_ID, Messages.Fit_reject, false).setToolTipText(Messages.Fit_reject_tip);
        refit();
    }

    private void refit() {
        forget();
        try {
            CurveLogs logs = CurveLogs.of(session.study(), form.type(), choice.of(form.type()));
            job = new FitJob(logs, form.settings(), getShell().getDisplay(), this::show);
            words.setText(Messages.Fit_fitting);
            job.schedule();
        } catch (FieldRefusal refusal) {
            words.setText(refusal.getMessage());
        }
    }

    /** What was found for other entries is no longer true. */
    private void forget() {
        if (job != null) {
            job.cancel();
            job = null;
        }
        shown = null;
        accept().setEnabled(false);
        chart.say(Messages.Fit_noChart);
        changes.setModel(new ResultModel(CurveChangeTable.NONE));
        residuals.setModel(new ResultModel(ResidualTable.NONE));
    }

    /** A fit to other entries may end just when they change; what it found is thrown away. */
    private void show(FitJob of, CurveFitting fitting) {
        if (of != job || words.isDisposed()) {
            return;
        }
        shown = fitting;
        words.setText(CurveWords.of(fitting).stream().map(Words::say).collect(Collectors.joining("\n")));
        chart.show(fitting);
        chart.say(fitting.fit().isPresent() ? "" : Messages.Fit_noChart);
        changes.setModel(new ResultModel(CurveChangeTable.of(fitting)));
        residuals.setModel(new ResultModel(ResidualTable.of(fitting)));
        use.show(fitting.type());
        ready();
    }

    /** There is something to accept: a curve that differs from the type's, or routes that would go by it. */
    private void ready() {
        accept().setEnabled(shown != null && shown.fit().isPresent()
                && !(CurveWriter.changes(shown).isEmpty() && use.routes().isEmpty()));
    }

    private Button accept() {
        return getButton(IDialogConstants.OK_ID);
    }

    @Override
    protected void okPressed() {
        session.execute(new WriteCurve(shown, use.routes()));
        super.okPressed();
    }

    @Override
    public boolean close() {
        if (job != null) {
            job.cancel();
        }
        return super.close();
    }
}
