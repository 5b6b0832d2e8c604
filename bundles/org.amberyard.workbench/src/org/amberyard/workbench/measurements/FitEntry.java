package org.amberyard.workbench.measurements;

import java.util.OptionalDouble;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.fields.Field;
import org.amberyard.workbench.fields.FieldRefusal;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** A figure that the fit of a curve starts from, typed in the study's units. */
final class FitEntry {

    private static final int WIDTH = 90;

    private final Field field;
    private final Text text;
    private double shown;
    private String shownText = "";

    FitEntry(Composite parent, EAttribute attribute, Study study) {
        field = new Field(attribute, study);
        Label label = new Label(parent, SWT.NONE);
        label.setText(field.header());
        text = new Text(parent, SWT.BORDER);
        text.setToolTipText(field.tip());
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(text);
    }

    /** Says what a blank stands for. */
    void whenBlank(String meaning) {
        text.setMessage(meaning);
    }

    void onChange(Runnable listener) {
        text.addListener(SWT.Modify, e -> listener.run());
    }

    void show(double value) {
        shown = value;
        shownText = field.text((Object) value);
        text.setText(shownText);
    }

    /** The figure; empty for a blank. */
    OptionalDouble optional() throws FieldRefusal {
        return text.getText().isBlank() ? OptionalDouble.empty() : OptionalDouble.of(required());
    }

    /** The figure, which must be there; one that nobody has touched to its last digit. */
    double required() throws FieldRefusal {
        return text.getText().equals(shownText) ? shown : (double) field.value(text.getText());
    }
}
