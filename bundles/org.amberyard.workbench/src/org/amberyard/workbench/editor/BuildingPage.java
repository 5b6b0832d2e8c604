package org.amberyard.workbench.editor;

import java.util.List;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.MeterBill;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.fields.ComputedColumn;
import org.amberyard.workbench.fields.ElementList;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.fields.Sheets;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** The load of the site's building: its months, its days from interval data, and its bills as printed. */
final class BuildingPage extends StudyPage {

    BuildingPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm parts = columns(parent);
        SashForm loads = stack(parts);
        rows(loads, Messages.Table_building, this::depot, Literals.DEPOT__BUILDING_MONTHS, Literals.BUILDING_MONTH);
        Sheets days = new Sheets(loads);
        FeatureTable kinds = imported(days, Messages.Table_loadDays, Literals.DEPOT__BUILDING_LOAD_DAYS, Literals.BUILDING_LOAD_DAY,
                Columns.of(Literals.BUILDING_LOAD_DAY, Literals.BUILDING_LOAD_DAY__MEAN_KW, Literals.BUILDING_LOAD_DAY__PEAK_DAY_KW),
                LoadDayColumns.all());
        FeatureTable dates = imported(days, Messages.Table_meterDays, Literals.DEPOT__METER_DAYS, Literals.METER_DAY,
                Columns.of(Literals.METER_DAY, Literals.METER_DAY__LOAD_KW), LoadDayColumns.ofDates());
        days.share(kinds, dates);
        bills(stack(parts));
        return parts;
    }

    private FeatureTable imported(Sheets place, String title, EReference list, EClass kind, List<EStructuralFeature> columns,
            List<ComputedColumn> computed) {
        FeatureTable days = rows(place.area(), title, new ElementList(session(), this::depot, list, kind).importedOnly(), columns, computed);
        days.addTool(Messages.Meter_import, Messages.Meter_import_tip, () -> MenuCommand.run(MenuCommand.IMPORT_METER));
        return days;
    }

    /** Bills as printed above the lines of the one in focus. */
    private void bills(SashForm parts) {
        FeatureTable bills = rows(parts, Messages.Table_meterBills, this::depot, Literals.DEPOT__METER_BILLS, Literals.METER_BILL);
        FeatureTable lines = rows(parts, Messages.Table_meterBillLines, () -> bills.selected() instanceof MeterBill bill ? bill : null,
                Literals.METER_BILL__LINES, Literals.METER_BILL_LINE);
        drive(bills, lines);
    }

    private Depot depot() {
        return study().getDepot();
    }
}
