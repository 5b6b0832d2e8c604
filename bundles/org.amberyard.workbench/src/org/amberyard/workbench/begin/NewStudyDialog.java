package org.amberyard.workbench.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.study.begin.AnswerSheet;
import org.amberyard.study.begin.Answers;
import org.amberyard.workbench.preferences.NewStudySettings;
import org.amberyard.workbench.preferences.Preferences;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks ten questions about a yard for a study to be made of the answers, or of defaults only. */
public final class NewStudyDialog extends TitleAreaDialog {
    /** Result of the button that asks nothing. */
    private static final int EMPTY = IDialogConstants.CLIENT_ID;
    private static final int LINE_SPACING = 8;

    private final String currency = Preferences.CURRENCY.get();
    private final AnswerSheet sheet = new AnswerSheet(begun(), Locale.getDefault(Locale.Category.FORMAT));
    private final List<AnswerField> fields = new ArrayList<>();
    private Text name;
    private Combo units;
    private Answers answers;
    private boolean showing;

    /** A dialog over a window. */
    public NewStudyDialog(Shell parent) {
        super(parent);
        setHelpAvailable(false);
    }

    private static UnitSystem begun() {
        return NewStudySettings.units() == UnitChoice.US ? UnitSystem.US : UnitSystem.METRIC;
    }

    /** The answers; empty when the dialog was cancelled or none are wanted. */
    public Optional<Answers> answers() {
        return Optional.ofNullable(answers);
    }

    /** True when a study with defaults only is wanted. */
    public boolean withoutAnswers() {
        return getReturnCode() == EMPTY;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.Begin_title);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(Messages.Begin_title);
        setMessage(Messages.Begin_hint);
        Composite form = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(16, 12).spacing(16, LINE_SPACING).applyTo(form);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form);
        createName(form);
        units = choice(form, Messages.Begin_units, Messages.Begin_us, Messages.Begin_metric);
        units.select(begun() == UnitSystem.US ? 0 : 1);
        units.addListener(SWT.Selection, e -> changeUnits());
        Question.all().forEach(question -> createLine(form, question));
        check();
        return area;
    }

    /** What is typed at once is the name, not the button that Enter stands for. */
    @Override
    public void create() {
        super.create();
        name.selectAll();
        name.setFocus();
    }

    private void createName(Composite form) {
        new Label(form, SWT.NONE).setText(Messages.Begin_name);
        name = new Text(form, SWT.BORDER);
        name.setText(Messages.Begin_usualName);
        name.selectAll();
        name.addListener(SWT.Modify, e -> check());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(name);
    }

    private static Combo choice(Composite form, String label, String... choices) {
        new Label(form, SWT.NONE).setText(label);
        Combo combo = new Combo(form, SWT.READ_ONLY);
        combo.setItems(choices);
        combo.select(0);
        return combo;
    }

    private void createLine(Composite form, Question question) {
        new Label(form, SWT.NONE).setText(question.label());
        Composite line = new Composite(form, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(question.controls()).spacing(LINE_SPACING, 0).applyTo(line);
        question.fields().forEach(part -> fields.add(new AnswerField(line, question, part, sheet, currency, this::check)));
    }

    private void changeUnits() {
        // What stands in the fields is in the units of before until all of them have been written anew.
        showing = true;
        sheet.use(units.getSelectionIndex() == 0 ? UnitSystem.US : UnitSystem.METRIC);
        fields.forEach(AnswerField::show);
        showing = false;
        check();
    }

    /** Reads all answers again, for one may rule out another. */
    private void check() {
        if (showing) {
            return;
        }
        String wrong = name.getText().isBlank() ? Messages.Begin_noName : null;
        for (AnswerField field : fields) {
            Optional<String> refusal = field.read();
            wrong = wrong == null ? refusal.orElse(null) : wrong;
        }
        setErrorMessage(wrong);
        if (getButton(IDialogConstants.OK_ID) != null) {
            getButton(IDialogConstants.OK_ID).setEnabled(wrong == null);
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, EMPTY, Messages.Begin_empty, false);
        createButton(parent, IDialogConstants.OK_ID, Messages.Begin_ok, true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    @Override
    protected void buttonPressed(int id) {
        if (id == EMPTY) {
            setReturnCode(EMPTY);
            close();
        } else {
            super.buttonPressed(id);
        }
    }

    @Override
    protected void okPressed() {
        answers = sheet.answers(name.getText().strip());
        super.okPressed();
    }
}
