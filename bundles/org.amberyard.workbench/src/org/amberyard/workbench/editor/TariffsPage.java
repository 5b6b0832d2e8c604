package org.amberyard.workbench.editor;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.Tariff;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.fields.ElementList;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Tariffs, the one in use first, with the terms and charges of the one in focus; and the building's load. */
final class TariffsPage extends StudyPage {

    TariffsPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm parts = stack(parent);
        SashForm top = columns(parts);
        ElementList list = new ElementList(session(), this::depot, DepotPackage.Literals.DEPOT__ALTERNATIVE_TARIFFS,
                DepotPackage.Literals.SCHEDULED_TARIFF).showing(this::tariffs);
        FeatureTable tariffs = rows(top, Messages.Table_tariffs, list, Columns.of(DepotPackage.Literals.TARIFF));
        tariffs.addTool(Messages.UseTariff, Messages.UseTariff_tip,
                () -> new UseTariff(session()).run((Tariff) tariffs.selected()));
        FeatureTable terms = one(top, Messages.Table_tariff, tariffs::selected);
        FeatureTable bills = rows(top, Messages.Table_building, this::depot, DepotPackage.Literals.DEPOT__BUILDING_MONTHS,
                DepotPackage.Literals.BUILDING_MONTH);
        FeatureTable days = rows(top, Messages.Table_loadDays,
                new ElementList(session(), this::depot, DepotPackage.Literals.DEPOT__BUILDING_LOAD_DAYS,
                        DepotPackage.Literals.BUILDING_LOAD_DAY).importedOnly(),
                Columns.of(DepotPackage.Literals.BUILDING_LOAD_DAY, DepotPackage.Literals.BUILDING_LOAD_DAY__MEAN_KW,
                        DepotPackage.Literals.BUILDING_LOAD_DAY__PEAK_DAY_KW), LoadDayColumns.all());
        days.addTool(Messages.Meter_import, Messages.Meter_import_tip, () -> MenuCommand.run(MenuCommand.IMPORT_METER));
        FeatureTable charges = rows(parts, Messages.Table_charges,
                () -> tariffs.selected() instanceof ScheduledTariff byHours ? byHours : null,
                DepotPackage.Literals.SCHEDULED_TARIFF__CHARGES, DepotPackage.Literals.TARIFF_CHARGE);
        drive(tariffs, terms, charges);
        top.setWeights(28, 26, 22, 24);
        parts.setWeights(5, 6);
        return parts;
    }

    private Depot depot() {
        return study().getDepot();
    }

    private List<EObject> tariffs() {
        return depot() == null ? List.of() : Stream.<EObject>concat(Stream.ofNullable(depot().getTariff()),
                depot().getAlternativeTariffs().stream()).toList();
    }
}
