package org.amberyard.workbench.editor;

import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.fields.ElementList;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** The load of the site's building: its bills, and its days from interval data. */
final class BuildingPage extends StudyPage {

    BuildingPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm parts = columns(parent);
        rows(parts, Messages.Table_building, this::depot, DepotPackage.Literals.DEPOT__BUILDING_MONTHS,
                DepotPackage.Literals.BUILDING_MONTH);
        ElementList imported = new ElementList(session(), this::depot, DepotPackage.Literals.DEPOT__BUILDING_LOAD_DAYS,
                DepotPackage.Literals.BUILDING_LOAD_DAY).importedOnly();
        FeatureTable days = rows(parts, Messages.Table_loadDays, imported,
                Columns.of(DepotPackage.Literals.BUILDING_LOAD_DAY, DepotPackage.Literals.BUILDING_LOAD_DAY__MEAN_KW,
                        DepotPackage.Literals.BUILDING_LOAD_DAY__PEAK_DAY_KW),
                LoadDayColumns.all());
        days.addTool(Messages.Meter_import, Messages.Meter_import_tip, () -> MenuCommand.run(MenuCommand.IMPORT_METER));
        return parts;
    }

    private Depot depot() {
        return study().getDepot();
    }
}
