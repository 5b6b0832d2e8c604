package org.amberyard.workbench.views;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.depot.Depot;
import org.amberyard.report.Cautions;
import org.amberyard.report.Headline;
import org.amberyard.report.ResultTables;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.fields.CellMenu;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.Choices;
import org.amberyard.workbench.session.Evaluation;
import org.amberyard.workbench.session.PlanOptions;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;

/** The answer in words, and the plans in a few figures; choosing a plan tells its answer, and each figure says how it comes about. */
public final class HeadlineView extends ViewPart {

    private static final String CAUTIONS_COMMAND = "org.amberyard.workbench.cautions";
    private static final String TABLE = "headline";
    /** A longer name of a tariff would leave no room for what is said beside it. */
    private static final int MOST_OF_NAME = 24;
    private static final int PLANS_WIDTH = 570;

    private static final Map<String, String> KEY_FIGURES = Map.of("plan", Messages.Key_plan, "present_cost",
            Messages.Key_cost, "annual_equivalent", Messages.Key_perYear, "present_saving", Messages.Key_saving,
            "greenhouse_gas_saving", Messages.Key_air);

    private AnswerText answer;
    private StyledText state;
    private Link tariff;
    private Grid plans;
    /** The plans in the grid, or null. */
    private ResultModel figures;
    private final AskedCell asked = new AskedCell();
    private List<Headline> headlines = List.of();
    private StudySession shownSession;
    private StudyResult shownResult;
    private final LastChange lastChange = new LastChange();
    private UnitSystem shownUnits;
    private boolean reading;

    @Override
    public void createPartControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        area.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(12, 4).spacing(14, 2).applyTo(area);
        answer = new AnswerText(area);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(100, 40).applyTo(answer.control());
        plans = new Grid(area, new FindingsModel(List.of()));
        plans.markRow();
        plans.selection().onMove(this::planChosen);
        plans.onOpen(cell -> WhyView.show(getSite().getPage()));
        CellMenu.ofReading(plans).add(Messages.Menu_why, () -> WhyView.show(getSite().getPage()));
        getSite().setSelectionProvider(asked);
        GridDataFactory.fillDefaults().span(1, 2).grab(false, true).hint(PLANS_WIDTH, SWT.DEFAULT).applyTo(plans);
        area.addListener(SWT.Resize, e -> share(area));
        createState(area);
        ActiveSession.here().follow(area, this::update);
    }

    private void createState(Composite area) {
        state = new StyledText(area, SWT.WRAP | SWT.READ_ONLY | SWT.MULTI);
        state.setFont(Fonts.SMALL.font());
        state.setCaret(null);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.END).applyTo(state);
        Composite links = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(14, 0).applyTo(links);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.END).applyTo(links);
        tariff = link(links, this::openTariff);
        Link cautions = link(links, this::openCautions);
        cautions.setText("<a>" + Messages.Headline_cautions + "</a>");
        cautions.setToolTipText(Words.say(Cautions.text()));
    }

    private static Link link(Composite parent, Runnable action) {
        Link link = new Link(parent, SWT.NONE);
        link.setFont(Fonts.SMALL.font());
        link.setLinkForeground(Palette.NOTICE.color());
        link.addListener(SWT.Selection, e -> action.run());
        GridDataFactory.fillDefaults().align(SWT.END, SWT.END).applyTo(link);
        return link;
    }

    private void openTariff() {
        StudyEditors.open(getSite().getPage(), shownSession.study().getDepot().getTariff(), null);
    }

    /** Figures in money say little without the tariff behind them. */
    private void nameTariff() {
        String name = Optional.ofNullable(shownSession).map(s -> s.study().getDepot()).map(Depot::getTariff).map(Words::name).orElse("");
        String shown = name.isEmpty() ? "" : "<a>" + NLS.bind(Messages.Headline_tariff, shortened(name)).replace("&", "&&") + "</a>";
        tariff.setToolTipText(NLS.bind(Messages.Headline_tariff_tip, name));
        if (!tariff.getText().equals(shown)) {
            tariff.setText(shown);
            tariff.setVisible(!name.isEmpty());
            tariff.requestLayout();
        }
    }

    private static String shortened(String name) {
        return name.length() > MOST_OF_NAME ? name.substring(0, MOST_OF_NAME).strip() + "…" : name;
    }

    private void openCautions() {
        try {
            getSite().getService(IHandlerService.class).executeCommand(CAUTIONS_COMMAND, null);
        } catch (CommandException e) {
            throw new IllegalStateException(e);
        }
    }

    private void update(Optional<StudySession> session) {
        if (session.orElse(null) != shownSession) {
            shownSession = session.orElse(null);
            shownResult = null;
            figures = null;
        }
        lastChange.see(shownSession);
        nameTariff();
        if (session.isEmpty()) {
            clear();
            say(Messages.Headline_none, Palette.MUTED);
            return;
        }
        UnitSystem units = StudyUnits.of(session.get().study());
        session.get().evaluation().result().ifPresentOrElse(result -> show(result, units), this::clear);
        boolean stale = session.get().evaluation().phase() == Evaluation.Phase.STALE;
        boolean outdated = session.get().evaluation().isOutdated();
        answer.setFaded(outdated);
        plans.setFaded(outdated);
        say(words(session.get()), stale ? Palette.ERROR : Palette.MUTED);
    }

    /** Where the results stand, and what the last edit has done to the cost of the plan on show. */
    private String words(StudySession session) {
        return lastChange.words(plan()).orElseGet(() -> EvaluationWords.of(session));
    }

    private void clear() {
        shownResult = null;
        figures = null;
        asked.setSelection(StructuredSelection.EMPTY);
        headlines = List.of();
        answer.clear();
        plans.setVisible(false);
    }

    private void say(String text, Palette color) {
        state.setForeground(color.color());
        if (!state.getText().equals(text)) {
            state.setText(text);
            state.getParent().layout();
        }
    }

    private void show(StudyResult result, UnitSystem units) {
        reading = true;
        boolean others = result != shownResult || units != shownUnits;
        if (others) {
            shownResult = result;
            shownUnits = units;
            headlines = Headline.of(result, units);
            put(ResultModel.of(ResultTables.headline(result, units), KEY_FIGURES));
        }
        int plan = PlanOptions.of(result).pick(shownSession.choices().of(Choices.Kind.PLAN)).orElseThrow().place();
        boolean another = plan() != plan;
        if (another) {
            plans.goTo(figures.shownRow(plan), plans.selection().column());
        }
        reading = false;
        if (others || another) {
            ask();
        }
        showAnswer();
    }

    /** New figures of the same study come as the user has sorted the ones before. */
    private void put(ResultModel newFigures) {
        boolean again = figures != null;
        figures = newFigures;
        if (again) {
            plans.renewModel(figures);
        } else {
            plans.setModel(figures);
        }
        plans.setVisible(true);
    }

    /** The plan in focus; which row it has hangs on how the figures are sorted. */
    private int plan() {
        return figures == null ? 0 : figures.row(plans.selection().row());
    }

    /** The plan that the user goes to is the one that all views show. */
    private void planChosen() {
        if (!reading && shownResult != null) {
            shownSession.choices().choose(Choices.Kind.PLAN, new Choices.Chosen(shownResult.plans().get(plan()).name(), plan()));
            ask();
        }
    }

    /** Tells those who explain figures which one is in focus. */
    private void ask() {
        asked.setSelection(new StructuredSelection(new CellQuestion(shownSession.study(), shownResult, ResultTables.place(TABLE), plan(),
                figures.source(plans.selection().column()))));
    }

    /** The answer of the chosen plan; that of the first other plan while the baseline is chosen. */
    private void showAnswer() {
        if (headlines.isEmpty()) {
            return;
        }
        int plan = plan();
        Headline headline = headlines.stream().filter(h -> h.plan() == plan).findFirst().orElse(headlines.get(0));
        String text = headline.sentences().stream().map(Words::say).collect(Collectors.joining(" "));
        answer.show(text, Words.say(headline.cost()));
    }

    /** In a narrow window the figures leave half of it to the words. */
    private void share(Composite area) {
        GridData data = (GridData) plans.getLayoutData();
        int wanted = Math.min(PLANS_WIDTH, area.getClientArea().width / 2);
        if (data.widthHint != wanted) {
            data.widthHint = wanted;
            area.layout();
        }
    }

    @Override
    public void setFocus() {
        plans.setFocus();
    }
}
