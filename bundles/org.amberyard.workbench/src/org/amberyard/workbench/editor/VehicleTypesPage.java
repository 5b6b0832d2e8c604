package org.amberyard.workbench.editor;

import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Kinds of bus, engine and electric, as columns beside their many fields. */
final class VehicleTypesPage extends StudyPage {

    VehicleTypesPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        transposed(columns, Messages.Table_engines, StudyPackage.Literals.STUDY__VEHICLE_TYPES,
                VehiclesPackage.Literals.COMBUSTION_TYPE);
        transposed(columns, Messages.Table_electric, StudyPackage.Literals.STUDY__VEHICLE_TYPES,
                VehiclesPackage.Literals.ELECTRIC_TYPE);
        return columns;
    }
}
