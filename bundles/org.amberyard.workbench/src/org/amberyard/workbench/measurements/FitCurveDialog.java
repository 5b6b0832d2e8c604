package org.amberyard.workbench.measurements;

import java.util.List;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.report.ResidualTable;
import org.amberyard.study.CurveFitting;
import org.amberyard.study.CurveLogs;
import org.amberyard.study.CurveWords;
import org.amberyard.workbench.fields.FieldRefusal;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.look.SizedDialog;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.views.ResultModel;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Shows the curve that fits the logs of a type, how well it does and what it makes of every log; OK writes it. */
public final class FitCurveDialog extends SizedDialog {

    private static final Point SIZE = new Point(860, 640);
    private static final int WORDS_HEIGHT = 190;

    private final StudySession session;
    private final List<ElectricType> types;
    private FitForm form;
    private Text words;
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
        words = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, WORDS_HEIGHT).applyTo(words);
        residuals = new Grid(area, new ResultModel(ResidualTable.NONE));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(residuals);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.Fit_accept, true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        refit();
    }

    private void refit() {
        forget();
        try {
            CurveLogs logs = CurveLogs.of(session.study(), form.type());
            job = new FitJob(logs, form.settings(), getShell().getDisplay(), this::show);
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
        residuals.setModel(new ResultModel(ResidualTable.NONE));
    }

    /** A fit to other entries may end just when they change; what it found is thrown away. */
    private void show(FitJob of, CurveFitting fitting) {
        if (of != job || words.isDisposed()) {
            return;
        }
        shown = fitting;
        words.setText(String.join("\n", CurveWords.of(fitting)));
        residuals.setModel(new ResultModel(ResidualTable.of(fitting)));
        accept().setEnabled(fitting.fit().isPresent());
    }

    private Button accept() {
        return getButton(IDialogConstants.OK_ID);
    }

    @Override
    protected void okPressed() {
        session.execute(new WriteCurve(shown));
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
