package org.amberyard.workbench.documents;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.report.document.DocumentFormat;
import org.amberyard.report.document.Paper;
import org.amberyard.report.papers.DocumentFolder;
import org.amberyard.report.papers.DocumentKind;
import org.amberyard.report.papers.GrantTable;
import org.amberyard.report.papers.PaperChoices;
import org.amberyard.workbench.session.Choices;
import org.amberyard.workbench.session.Choices.Chosen;
import org.amberyard.workbench.session.Choices.Kind;
import org.amberyard.workbench.session.Options;
import org.amberyard.workbench.session.PlanOptions;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Asks which documents of which plan are wanted, and in which formats. */
final class DocumentsForm {
    private final Composite area;
    private final Combo plan;
    private final Combo programme;
    private final Combo paper;
    private final Map<DocumentKind, Button> kinds;
    private final Map<DocumentFormat, Button> formats;
    private final TableOrder tables;
    private final Button wholeVins;
    private final Text dated;

    /**
     * @param choices what the views show, with which the form begins
     * @param changed is run whenever something else is chosen
     */
    DocumentsForm(Composite parent, StudyResult result, Choices choices, Runnable changed) {
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        Options plans = PlanOptions.of(result);
        plan = combo(Messages.Documents_plan, plans.names(), changed);
        plan.select(plans.pick(choices.of(Kind.PLAN)).map(Chosen::place).orElse(-1));
        kinds = checks(Messages.Documents_kinds, 2, DocumentKind.values(), DocumentKind::label, k -> k != DocumentKind.APPENDIX,
                changed);
        formats = checks(Messages.Documents_formats, DocumentFormat.values().length, DocumentFormat.values(),
                DocumentFormat::name, f -> f != DocumentFormat.CSV && f != DocumentFormat.JSON, changed);
        Label order = new Label(area, SWT.NONE);
        order.setText(Messages.Documents_tables);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(order);
        tables = new TableOrder(area, changed);
        List<String> programmes = result.input().funding().programmes().stream().map(Programme::name).toList();
        programme = combo(Messages.Documents_programme, programmes, changed);
        programme.add(Messages.Documents_largest, 0);
        programme.select(0);
        paper = combo(Messages.Documents_paper, Stream.of(Paper.values()).map(Paper::label).toList(), changed);
        paper.select(Paper.LETTER.ordinal());
        new Label(area, SWT.NONE).setText(Messages.Documents_dated);
        dated = new Text(area, SWT.BORDER);
        dated.setText(LocalDate.now().toString());
        dated.addListener(SWT.Modify, e -> changed.run());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(dated);
        wholeVins = check(area, Messages.Documents_agency, false, changed);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(wholeVins);
    }

    private Combo combo(String label, List<String> items, Runnable changed) {
        new Label(area, SWT.NONE).setText(label);
        Combo combo = new Combo(area, SWT.READ_ONLY);
        combo.setItems(items.toArray(String[]::new));
        combo.addListener(SWT.Selection, e -> changed.run());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
        return combo;
    }

    private <T> Map<T, Button> checks(String title, int columns, T[] all, Function<T, String> label, Function<T, Boolean> first,
            Runnable changed) {
        Group group = new Group(area, SWT.NONE);
        group.setText(title);
        GridLayoutFactory.swtDefaults().numColumns(columns).applyTo(group);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(group);
        Map<T, Button> buttons = new LinkedHashMap<>();
        for (T one : all) {
            buttons.put(one, check(group, label.apply(one), first.apply(one), changed));
        }
        return buttons;
    }

    private static Button check(Composite parent, String text, boolean checked, Runnable changed) {
        Button button = new Button(parent, SWT.CHECK);
        button.setText(text);
        button.setSelection(checked);
        button.addListener(SWT.Selection, e -> changed.run());
        return button;
    }

    private static <T> Set<T> chosen(Map<T, Button> buttons) {
        return buttons.entrySet().stream().filter(e -> e.getValue().getSelection()).map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    /** While documents are written nothing is chosen. */
    void setEnabled(boolean enabled) {
        area.setEnabled(enabled);
    }

    /** Place of the plan. */
    int plan() {
        return plan.getSelectionIndex();
    }

    DocumentFolder.Wanted wanted() {
        return new DocumentFolder.Wanted(chosen(kinds), chosen(formats));
    }

    /** True when documents can be written as chosen. */
    boolean isComplete() {
        DocumentFolder.Wanted wanted = wanted();
        boolean grants = wanted.kinds().contains(DocumentKind.GRANT);
        return plan() >= 0 && !wanted.kinds().isEmpty() && !wanted.formats().isEmpty() && (!grants || !tables.chosen().isEmpty())
                && isDate();
    }

    private boolean isDate() {
        try {
            return dated.getText().isBlank() || LocalDate.parse(dated.getText().strip()).getYear() > 0;
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    PaperChoices choices() {
        Optional<String> date = Optional.of(dated.getText().strip()).filter(d -> !d.isEmpty());
        List<GrantTable> order = tables.chosen();
        Optional<String> name = programme.getSelectionIndex() > 0 ? Optional.of(programme.getText()) : Optional.empty();
        return new PaperChoices(order, name, wholeVins.getSelection(), date, Paper.values()[paper.getSelectionIndex()]);
    }
}
