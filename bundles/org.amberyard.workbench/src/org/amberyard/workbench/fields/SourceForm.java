package org.amberyard.workbench.fields;

import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.study.DateText;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Where the value of one field came from: how far it can be trusted, what it was taken from, and of which date that is. */
final class SourceForm {

    private final Sourced element;
    private final EStructuralFeature field;
    private final Combo quality;
    private final Text citation;
    private final Text date;

    SourceForm(Composite parent, Sourced element, EStructuralFeature field) {
        this.element = element;
        this.field = field;
        Group area = new Group(parent, SWT.NONE);
        area.setText(NLS.bind(Messages.Source_of, Words.field(field).label()));
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(area);
        quality = line(area, Messages.Source_quality, new Combo(area, SWT.READ_ONLY));
        quality.setItems(
                Stream.concat(Stream.of(Messages.Source_none), Arrays.stream(Quality.values()).map(q -> Words.choice(CommonPackage.Literals.QUALITY, q)))
                        .toArray(String[]::new));
        citation = line(area, Messages.Source_citation, new Text(area, SWT.BORDER));
        date = line(area, Messages.Source_date, new Text(area, SWT.BORDER));
        date.setMessage(Messages.Source_date_hint);
        Optional<SourceNote> known = known();
        quality.select(known.map(n -> n.getQuality().ordinal() + 1).orElse(0));
        citation.setText(known.map(SourceNote::getCitation).orElse(""));
        date.setText(known.map(SourceNote::getDate).orElse(""));
    }

    /** Labels stand before their controls. */
    private static <C extends Control> C line(Composite area, String text, C control) {
        Label label = new Label(area, SWT.NONE);
        label.setText(text);
        label.moveAbove(control);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(control);
        return control;
    }

    private Optional<SourceNote> known() {
        return SourceNotes.find(element, field.getName());
    }

    private Optional<Quality> chosen() {
        int place = quality.getSelectionIndex();
        return place <= 0 ? Optional.empty() : Optional.of(Quality.values()[place - 1]);
    }

    private String citation() {
        return blankIsNull(citation.getText());
    }

    private String date() {
        String typed = date.getText().strip();
        return blankIsNull(DateText.date(typed, Locale.getDefault(Locale.Category.FORMAT)).map(Object::toString).orElse(typed));
    }

    private static String blankIsNull(String text) {
        return text.isBlank() ? null : text.strip();
    }

    /** True when something else stands here than in the study. */
    boolean isChanged() {
        Optional<SourceNote> known = known();
        boolean same = known.map(n -> n.getQuality()).equals(chosen())
                && Objects.equals(known.map(SourceNote::getCitation).orElse(null), citation())
                && Objects.equals(known.map(SourceNote::getDate).orElse(null), date());
        return !same && (chosen().isPresent() || known.isPresent());
    }

    /** Notes it on the element; without a quality what was noted goes. */
    void write() {
        Optional<SourceNote> known = known();
        if (chosen().isEmpty()) {
            known.ifPresent(element.getSources()::remove);
            return;
        }
        SourceNote note = known.orElseGet(() -> SourceNotes.of(field.getName(), chosen().orElseThrow(), null, null));
        note.setQuality(chosen().orElseThrow());
        note.setCitation(citation());
        note.setDate(date());
        if (known.isEmpty()) {
            element.getSources().add(note);
        }
    }
}
