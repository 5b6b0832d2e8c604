package org.amberyard.workbench.measurements;

import java.util.List;
import org.amberyard.core.consumption.FitSettings;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehiclesPackage.Literals;
import org.amberyard.study.CurveFitting;
import org.amberyard.workbench.fields.FieldRefusal;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The electric type to fit and the figures that the fit starts from. */
final class FitForm {

    private final List<ElectricType> types;
    private final Combo chooser;
    private final FitEntry mild;
    private final FitEntry coolFrom;
    private final FitEntry rise;

    /** @param changed is run whenever another type or figure is entered */
    FitForm(Composite parent, Study study, List<ElectricType> types, Runnable changed) {
        this.types = types;
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).applyTo(area);
        new Label(area, SWT.NONE).setText(Messages.Fit_type);
        chooser = new Combo(area, SWT.READ_ONLY);
        chooser.setItems(types.stream().map(ElementNames::of).toArray(String[]::new));
        chooser.select(0);
        rise = new FitEntry(area, Literals.ELECTRIC_TYPE__CURVE_RISE_PER_K, study);
        rise.whenBlank(Messages.Fit_blankRise);
        mild = new FitEntry(area, Literals.ELECTRIC_TYPE__CURVE_MILD_C, study);
        coolFrom = new FitEntry(area, Literals.ELECTRIC_TYPE__CURVE_COOL_FROM_C, study);
        showTemperatures();
        chooser.addListener(SWT.Selection, e -> showTemperatures());
        chooser.addListener(SWT.Selection, e -> changed.run());
        List.of(rise, mild, coolFrom).forEach(entry -> entry.onChange(changed));
    }

    /** The type that is chosen. */
    ElectricType type() {
        return types.get(chooser.getSelectionIndex());
    }

    private void showTemperatures() {
        mild.show(type().getCurveMildC());
        coolFrom.show(type().getCurveCoolFromC());
    }

    /** What the fit starts from. */
    FitSettings settings() throws FieldRefusal {
        double mildC = mild.required();
        double coolFromC = coolFrom.required();
        if (coolFromC < mildC) {
            throw new FieldRefusal(Messages.Fit_coolsBelowMild);
        }
        return CurveFitting.settings(type(), mildC, coolFromC, rise.optional());
    }
}
