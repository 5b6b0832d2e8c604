package org.amberyard.workbench.narrative;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Narrative;
import org.amberyard.report.papers.FigureSource;
import org.amberyard.report.papers.NarrativeFacts;
import org.amberyard.report.papers.NarrativeFilling;
import org.amberyard.report.papers.StudyFacts;
import org.amberyard.study.NarrativeText;
import org.amberyard.workbench.grid.CellMark;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.DropList;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.Choices;
import org.amberyard.workbench.session.Options;
import org.amberyard.workbench.session.PlanOptions;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Where a narrative is written: the text, what it will read, the figures to choose from, and what has changed since it was given out. */
public final class NarrativeDesk {
    private static final int STATE_HEIGHT = 38;
    /** Height of the lines above the texts, which a button needs. */
    private static final int TITLE_HEIGHT = 38;

    private final StudySession session;
    private final Supplier<Optional<Narrative>> selected;
    private final Runnable marked;
    private final SashForm area;
    private final NarrativeEntry entry;
    private final FilledView preview;
    private final Combo plans;
    private final Button copy;
    private final Text state;
    private final FigureChooser figures;
    private final FigureWork work;
    private Optional<FigureWork.Found> found = Optional.empty();
    private StudyResult asked;
    private int askedPlan = -1;
    private Set<FigureSource> askedOthers = Set.of();
    private String failure = "";

    /**
     * @param selected the narrative in focus
     * @param marked is run whenever other things may be said of narratives by {@link #mark}
     */
    public NarrativeDesk(Composite parent, StudySession session, Supplier<Optional<Narrative>> selected, Runnable marked) {
        this.session = session;
        this.selected = selected;
        this.marked = marked;
        area = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        area.setBackground(Palette.PAPER.color());
        Composite written = paper(area, 1);
        SashForm texts = new SashForm(written, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(texts);
        entry = new NarrativeEntry(titled(texts, Messages.Narrative_text), session, this::preview);
        Composite read = titled(texts, Messages.Narrative_preview);
        copy = copyButton(read);
        preview = new FilledView(read);
        entry.control().setToolTipText(Messages.Narrative_hint);
        List.of(entry.control(), preview.control()).forEach(text -> GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(text));
        state = stateText(written);
        Composite chosen = paper(area, 2);
        title(chosen, Messages.Narrative_plan, false);
        plans = DropList.on(chosen);
        plans.addListener(SWT.Selection, e -> choosePlan());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(plans);
        figures = new FigureChooser(chosen, name -> entry.insert("{" + name.words() + "}"));
        area.setWeights(59, 41);
        work = new FigureWork(area, session.figures(), this::found, this::failed);
    }

    private Button copyButton(Composite bar) {
        Button made = new Button(bar, SWT.PUSH);
        made.setText(Messages.Narrative_copy);
        made.setToolTipText(Messages.Narrative_copy_tip);
        made.addListener(SWT.Selection, e -> copy());
        GridDataFactory.swtDefaults().hint(SWT.DEFAULT, TITLE_HEIGHT).applyTo(made);
        return made;
    }

    private static Text stateText(Composite parent) {
        Text made = new Text(parent, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        made.setBackground(Palette.PAPER.color());
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, STATE_HEIGHT).applyTo(made);
        return made;
    }

    private static Composite paper(Composite parent, int columns) {
        Composite made = new Composite(parent, SWT.NONE);
        made.setBackground(Palette.PAPER.color());
        made.setBackgroundMode(SWT.INHERIT_DEFAULT);
        GridLayoutFactory.fillDefaults().margins(8, 3).spacing(6, 3).numColumns(columns).applyTo(made);
        return made;
    }

    private static Composite titled(Composite parent, String words) {
        Composite made = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(1, 1).spacing(0, 3).numColumns(2).applyTo(made);
        title(made, words, true);
        return made;
    }

    private static void title(Composite parent, String words, boolean grab) {
        Label title = new Label(parent, SWT.NONE);
        title.setText(words);
        title.setFont(Fonts.TITLE.font());
        title.setForeground(Palette.INK.color());
        int above = (TITLE_HEIGHT - title.computeSize(SWT.DEFAULT, SWT.DEFAULT).y) / 2;
        GridDataFactory.fillDefaults().grab(grab, false).indent(0, above).hint(SWT.DEFAULT, TITLE_HEIGHT - above).applyTo(title);
    }

    /** The list of figures. */
    public Grid grid() {
        return figures.grid();
    }

    /** Enters what is being typed. */
    public void enter() {
        entry.enter();
    }

    /** Reads the study, the results and the user's choice again. */
    public void update() {
        entry.show(selected.get());
        ask();
        preview();
    }

    /** Figures are looked for where results or plan are others; those that were given out come along. */
    private void ask() {
        StudyResult result = session.evaluation().current().orElse(null);
        if (result == null) {
            return;
        }
        Options options = PlanOptions.of(result);
        int plan = options.pick(session.choices().of(Choices.Kind.PLAN)).map(Choices.Chosen::place).orElse(0);
        Set<FigureSource> others = NarrativeFacts.of(session.study()).stream().map(NarrativeFacts::givenOutFor).collect(Collectors.toSet());
        if (result != asked || plan != askedPlan || !others.equals(askedOthers)) {
            asked = result;
            askedPlan = plan;
            askedOthers = others;
            plans.setItems(options.names().toArray(String[]::new));
            plans.select(plan);
            plans.requestLayout();
            work.find(result, StudyFacts.of(session.study()), plan, others);
        }
    }

    private void choosePlan() {
        if (asked != null) {
            session.choices().choose(Choices.Kind.PLAN, PlanOptions.of(asked).list().get(plans.getSelectionIndex()));
        }
    }

    private void found(FigureWork.Found now) {
        found = Optional.of(now);
        failure = "";
        figures.show(found.map(FigureWork.Found::figures));
        preview();
    }

    private void failed(String why) {
        found = Optional.empty();
        failure = why;
        figures.show(found.map(FigureWork.Found::figures));
        preview();
    }

    /** True when the figures are those of the study as it is, in the plan that is chosen. */
    private boolean isUpToDate() {
        return session.evaluation().current().filter(now -> found.filter(f -> f.of(now, askedPlan)).isPresent()).isPresent();
    }

    private Optional<NarrativeFilling> filling() {
        return found.map(f -> new NarrativeFilling(NarrativeText.of(entry.typed()), f.figures()));
    }

    private void preview() {
        Optional<NarrativeFilling> filling = filling();
        filling.ifPresentOrElse(f -> preview.show(f, entry.control().getCaretOffset()), () -> preview.show(entry.typed()));
        copy.setEnabled(isUpToDate() && selected.get().isPresent());
        List<String> faults = filling.map(NarrativeFilling::faults).orElseGet(() -> NarrativeText.of(entry.typed()).faults());
        Optional<SinceGiven> since = selected.get().flatMap(n -> since(n, entry.typed()));
        Palette colour = since.filter(SinceGiven::hasChanged).isPresent() ? Palette.WARNING : Palette.MUTED;
        state.setForeground((faults.isEmpty() && failure.isEmpty() ? colour : Palette.ERROR).color());
        state.setText((said(faults) + "\n" + since.map(SinceGiven::words).orElse("") + "\n" + failure).strip());
        state.setToolTipText(state.getText());
        marked.run();
    }

    private static String said(List<String> faults) {
        return faults.stream().map(Words::say).collect(Collectors.joining("\n"));
    }

    private Optional<SinceGiven> since(Narrative narrative, String text) {
        return found.flatMap(f -> SinceGiven.of(NarrativeFacts.of(narrative), text, f.bySource()));
    }

    /** What is to be said of a text in the list of all: what is wrong in it, and which figures have changed since it was given out. */
    public Optional<CellMark> mark(Narrative narrative) {
        String text = narrative.getText() == null ? "" : narrative.getText();
        String changed = since(narrative, text).filter(SinceGiven::hasChanged).map(SinceGiven::words).orElse("");
        String words = (said(NarrativeText.of(text).faults()) + "\n" + changed).strip();
        return words.isEmpty() ? Optional.empty() : Optional.of(new CellMark(CellMark.Level.WARNING, words));
    }

    /** Goes on in the text of the narrative in focus, behind what it says; false when there is none. */
    public boolean write() {
        update();
        return entry.goToEnd();
    }

    /** Only figures of the study as it is are given out; entering the text moves none of them. */
    private void copy() {
        if (!isUpToDate()) {
            return;
        }
        entry.enter();
        Optional<Narrative> narrative = selected.get();
        filling().filter(f -> narrative.isPresent() && !f.printed().isEmpty() && isWanted(f)).ifPresent(f -> {
            Clipboard clipboard = new Clipboard(area.getDisplay());
            clipboard.setContents(new Object[] {f.printed()}, new Transfer[] {TextTransfer.getInstance()});
            clipboard.dispose();
            GiveOut.keep(session, List.of(new GiveOut.Given(narrative.orElseThrow(), f.givenOut())), found.orElseThrow().source(), LocalDate
                    .now());
        });
    }

    /** A text that is not whole leaves the program only when the user says so. */
    private boolean isWanted(NarrativeFilling filling) {
        return filling.faults().isEmpty() || new MessageDialog(area.getShell(), Messages.Narrative_copyFaultsTitle, null,
                NLS.bind(Messages.Narrative_copyFaults, said(filling.faults())), MessageDialog.WARNING, 1,
                Messages.Narrative_copyAnyway, IDialogConstants.CANCEL_LABEL).open() == 0;
    }
}
