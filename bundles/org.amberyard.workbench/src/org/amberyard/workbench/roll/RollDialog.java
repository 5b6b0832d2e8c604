package org.amberyard.workbench.roll;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.Study;
import org.amberyard.study.roll.ActualProposal;
import org.amberyard.study.roll.PastSteps;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.SizedDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/**
 * Rolls a study to a later base year: says field by field what changes and how the years that are over went beside the plan. OK
 * makes the new study; the one that is rolled stays as it is. The rolling goes on beside the window.
 */
public final class RollDialog extends SizedDialog {
    private static final Point SIZE = new Point(960, 720);

    private final Study study;
    private Combo year;
    private Combo plan;
    private Combo end;
    private CheckList late;
    private CheckList actuals;
    private RollTabs tabs;
    private Label words;
    private RollWork work;
    private Optional<RollWork.Rolled> rolled = Optional.empty();

    /** @param study a study that can be evaluated; a copy is rolled, so it may be edited */
    public RollDialog(Shell parent, Study study) {
        super(parent, Messages.Roll_title, SIZE);
        this.study = StudyFile.copy(study);
    }

    /** The new study; empty where the dialog was left. */
    public Optional<Study> made() {
        return getReturnCode() == OK ? rolled.map(r -> r.roll().study()) : Optional.empty();
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Settings settings = study.getSettings();
        int base = settings.getBaseYear();
        Composite form = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(10, 4).applyTo(form);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(form);
        year = combo(form, Messages.Roll_toYear, IntStream.range(base + 1, base + settings.getHorizonYears())
                .mapToObj(String::valueOf).toList(), 0);
        plan = combo(form, Messages.Roll_plan, study.getPlans().stream().map(Words::name).toList(), likely());
        end = combo(form, Messages.Roll_end, List.of(NLS.bind(Messages.Roll_sameLength, settings.getHorizonYears()),
                NLS.bind(Messages.Roll_sameEnd, base + settings.getHorizonYears() - 1)), 0);
        Composite lists = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).spacing(10, 0).applyTo(lists);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(lists);
        late = new CheckList(lists, Messages.Roll_late, Messages.Roll_late_tip, Messages.Roll_late_none, this::roll);
        actuals = new CheckList(lists, Messages.Roll_take, Messages.Roll_take_tip, Messages.Roll_take_none, this::roll);
        tabs = new RollTabs(area);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tabs.control());
        words = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(SIZE.x / 2, SWT.DEFAULT).applyTo(words);
        work = new RollWork(words, this::done, this::failed);
        return area;
    }

    private Combo combo(Composite form, String label, List<String> choices, int first) {
        Label name = new Label(form, SWT.NONE);
        name.setText(label);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).applyTo(name);
        Combo combo = new Combo(form, SWT.READ_ONLY);
        combo.setItems(choices.toArray(String[]::new));
        combo.select(first);
        combo.addListener(SWT.Selection, e -> entered());
        return combo;
    }

    /** The plan that is likely to have been carried out; the first beside the baseline where several could be. */
    private int likely() {
        Optional<Plan> first = study.getPlans().stream().filter(p -> p != study.getBaseline()).findFirst();
        return Math.max(0, study.getPlans().indexOf(PastSteps.likelyCarriedOut(study).or(() -> first).orElse(null)));
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.Roll_make, true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        entered();
    }

    /** Another year or plan has other steps that are over. */
    private void entered() {
        List<Sourced> past = past();
        late.show(past.stream().map(ElementNames::of).toList(), past.stream().map(s -> Phrase.start(Words.withKind(s))).toList());
        roll();
    }

    private List<Sourced> past() {
        return PastSteps.of(study.getPlans().get(plan.getSelectionIndex()), study.getSettings().getBaseYear(), toYear());
    }

    private int toYear() {
        return Integer.parseInt(year.getText());
    }

    /** Rolls to what is chosen; what was found for other choices is not theirs. */
    private void roll() {
        rolled = Optional.empty();
        getButton(IDialogConstants.OK_ID).setEnabled(false);
        say(Messages.Roll_working);
        tabs.wait(Messages.Roll_working);
        Set<ActualProposal.Kind> taken = Stream.of(ActualProposal.Kind.values()).filter(k -> actuals.checkedKeys().contains(k.key()))
                .collect(Collectors.toSet());
        RollWork.Chosen chosen = new RollWork.Chosen(toYear(), plan.getSelectionIndex(), end.getSelectionIndex() == 1, late.checked(),
                taken);
        work.ask(StudyFile.copy(study), chosen);
    }

    private void failed(String why) {
        say(NLS.bind(Messages.Roll_failed, Words.say(why)));
        tabs.wait(NLS.bind(Messages.Roll_failed, Words.say(why)));
    }

    private void done(RollWork.Rolled found) {
        rolled = Optional.of(found);
        actuals.show(found.proposals().stream().map(p -> p.kind().key()).toList(), found.proposals().stream().map(RollDialog::line).toList());
        tabs.show(found.roll().changes(), found.roll().remarks(), found.variances());
        getButton(IDialogConstants.OK_ID).setEnabled(true);
        say(Messages.Roll_ready);
    }

    private static String line(ActualProposal proposal) {
        return NLS.bind(Messages.Roll_proposal, new Object[] {Words.say(proposal.kind().label()), String.valueOf(proposal.year()),
            Words.figure(proposal.assumed()), Words.figure(proposal.actual())});
    }

    private void say(String text) {
        words.setText(text);
        words.requestLayout();
    }

    @Override
    public boolean close() {
        work.cancel();
        return super.close();
    }
}
