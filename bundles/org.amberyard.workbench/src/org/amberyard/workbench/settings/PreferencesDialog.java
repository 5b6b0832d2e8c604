package org.amberyard.workbench.settings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.amberyard.core.units.MonthNames;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.SizedDialog;
import org.amberyard.workbench.look.Theme;
import org.amberyard.workbench.preferences.NumberFormats;
import org.amberyard.workbench.preferences.Preferences;
import org.amberyard.workbench.session.ActiveSession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Shows and changes the user's own settings; they hold as soon as it is closed with OK, or say from when on. */
final class PreferencesDialog extends SizedDialog {
    private static final Point SIZE = new Point(560, 540);
    private static final int CURRENCY_LENGTH = 8;

    private final boolean studyOpen;
    private final Runnable showStudyPage;
    private final Map<Preferences, Combo> combos = new LinkedHashMap<>();
    private Text currency;

    /** @param showStudyPage leads to the settings of the study that is open */
    PreferencesDialog(Shell parent, boolean studyOpen, Runnable showStudyPage) {
        super(parent, Messages.Preferences_title, SIZE);
        this.studyOpen = studyOpen;
        this.showStudyPage = showStudyPage;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite form = (Composite) super.createDialogArea(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(16, 12).spacing(16, 8).applyTo(form);
        head(form, Messages.Preferences_window);
        choice(form, Preferences.LANGUAGE, Messages.Language, PreferencesDialog::language);
        choice(form, Preferences.THEME, Messages.Theme, PreferencesDialog::theme);
        choice(form, Preferences.COLOURS, Messages.Colours, PreferencesDialog::colours);
        choice(form, Preferences.NUMBERS, Messages.Numbers, PreferencesDialog::numbers);
        choice(form, Preferences.KEPT_AFTER_S, Messages.Kept, s -> NLS.bind(Messages.Kept_seconds, s));
        head(form, Messages.Preferences_newStudies);
        choice(form, Preferences.UNITS, Messages.Units, u -> "US".equals(u) ? Messages.Units_us : Messages.Units_metric);
        label(form, Messages.Currency);
        currency = new Text(form, SWT.BORDER);
        currency.setTextLimit(CURRENCY_LENGTH);
        currency.setText(Preferences.CURRENCY.get());
        currency.addListener(SWT.Modify, e -> getButton(OK).setEnabled(!currency.getText().isBlank()));
        GridDataFactory.swtDefaults().hint(80, SWT.DEFAULT).applyTo(currency);
        choice(form, Preferences.FISCAL_YEAR_START, Messages.FiscalYear, m -> Words.say(MonthNames.full(Integer.parseInt(m) - 1)));
        link(form);
        return form;
    }

    private static void head(Composite form, String text) {
        Label head = new Label(form, SWT.NONE);
        head.setText(text);
        head.setFont(Fonts.TITLE.font());
        GridDataFactory.fillDefaults().span(2, 1).indent(0, 6).applyTo(head);
    }

    private static void label(Composite form, String text) {
        Label label = new Label(form, SWT.NONE);
        label.setText(text);
        GridDataFactory.swtDefaults().applyTo(label);
    }

    private void choice(Composite form, Preferences preference, String label, UnaryOperator<String> words) {
        label(form, label);
        Combo combo = new Combo(form, SWT.READ_ONLY);
        List<String> choices = preference.choices();
        combo.setItems(choices.stream().map(words).toArray(String[]::new));
        combo.setVisibleItemCount(choices.size());
        combo.select(choices.indexOf(preference.get()));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
        combos.put(preference, combo);
    }

    private void link(Composite form) {
        Link link = new Link(form, SWT.WRAP);
        link.setText(studyOpen ? Messages.Preferences_ofStudy : Messages.Preferences_ofStudies);
        GridDataFactory.fillDefaults().span(2, 1).hint(SIZE.x - 60, SWT.DEFAULT).applyTo(link);
        link.addListener(SWT.Selection, e -> {
            cancelPressed();
            showStudyPage.run();
        });
    }

    private static String language(String choice) {
        return switch (choice) {
            case "en" -> "English";
            case "es" -> "Espa\u00F1ol";
            default -> Messages.Language_system;
        };
    }

    private static String theme(String choice) {
        return switch (choice) {
            case "dark" -> Messages.Theme_dark;
            case "system" -> Messages.Theme_system;
            default -> Messages.Theme_light;
        };
    }

    private static String colours(String choice) {
        return "strong".equals(choice) ? Messages.Colours_strong : Messages.Colours_usual;
    }

    private static String numbers(String choice) {
        String example = String.format(NumberFormats.of(choice), "%,.2f", 12_345.67);
        return "system".equals(choice) ? NLS.bind(Messages.Numbers_system, example) : example;
    }

    @Override
    protected void okPressed() {
        combos.forEach((preference, combo) -> preference.set(preference.choices().get(combo.getSelectionIndex())));
        Preferences.CURRENCY.set(currency.getText().strip());
        NumberFormats.use();
        super.okPressed();
        Theme.use(getParentShell().getDisplay());
        ActiveSession.here().tellAgain();
    }
}
