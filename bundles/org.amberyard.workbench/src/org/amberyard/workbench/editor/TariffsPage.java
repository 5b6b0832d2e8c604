package org.amberyard.workbench.editor;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.common.CommonPackage;
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

/** Tariffs, the one in use first, with the terms and charges of the one in focus. */
final class TariffsPage extends StudyPage {

    TariffsPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm parts = columns(parent);
        SashForm left = stack(parts);
        ElementList list = new ElementList(session(), this::depot, DepotPackage.Literals.DEPOT__ALTERNATIVE_TARIFFS,
                DepotPackage.Literals.SCHEDULED_TARIFF).showing(this::tariffs);
        FeatureTable tariffs = rows(left, Messages.Table_tariffs, list, Columns.of(DepotPackage.Literals.TARIFF,
                CommonPackage.Literals.SOURCED__NOTE));
        tariffs.addTool(Messages.UseTariff, Messages.UseTariff_tip, () -> use(tariffs));
        FeatureTable terms = one(left, Messages.Table_tariff, tariffs::selected);
        FeatureTable charges = rows(parts, Messages.Table_charges,
                () -> tariffs.selected() instanceof ScheduledTariff byHours ? byHours : null,
                DepotPackage.Literals.SCHEDULED_TARIFF__CHARGES, DepotPackage.Literals.TARIFF_CHARGE);
        drive(tariffs, terms, charges);
        parts.setWeights(35, 65);
        return parts;
    }

    private void use(FeatureTable tariffs) {
        if (tariffs.selected() instanceof Tariff chosen) {
            new UseTariff(session()).run(chosen);
            tariffs.reveal(chosen, null);
        }
    }

    private Depot depot() {
        return study().getDepot();
    }

    private List<EObject> tariffs() {
        return depot() == null ? List.of() : Stream.<EObject>concat(Stream.ofNullable(depot().getTariff()),
                depot().getAlternativeTariffs().stream()).toList();
    }
}
