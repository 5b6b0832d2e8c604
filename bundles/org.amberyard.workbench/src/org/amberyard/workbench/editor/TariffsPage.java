package org.amberyard.workbench.editor;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.Tariff;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.fields.ComputedWords;
import org.amberyard.workbench.fields.ElementList;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.fields.Sheets;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Tariffs, the one in use first, with the terms and charges of the one in focus. */
final class TariffsPage extends StudyPage {

    /** What charges ask; beside it stands in words when: as many columns as are seen at once in a window of the least size. */
    private static final List<EStructuralFeature> PRICES = List.of(Literals.TARIFF_CHARGE__CHARGE, Literals.TARIFF_CHARGE__KIND,
            Literals.TARIFF_CHARGE__PRICE_PER_KWH, Literals.TARIFF_CHARGE__PRICE_PER_KW);

    /** Months, days and hours of charges. */
    private static final List<EStructuralFeature> HOURS = List.of(Literals.TARIFF_CHARGE__CHARGE, Literals.TARIFF_CHARGE__FIRST_MONTH,
            Literals.TARIFF_CHARGE__LAST_MONTH, Literals.TARIFF_CHARGE__DAYS, Literals.TARIFF_CHARGE__FROM_MIN, Literals.TARIFF_CHARGE__TO_MIN);

    /** Past demands that count, and the years of service that a charge holds for. */
    private static final List<EStructuralFeature> YEARS = List.of(Literals.TARIFF_CHARGE__CHARGE,
            Literals.TARIFF_CHARGE__RATCHET_SHARE, Literals.TARIFF_CHARGE__RATCHET_MONTHS,
            Literals.TARIFF_CHARGE__FIRST_CONTRACT_YEAR, Literals.TARIFF_CHARGE__LAST_CONTRACT_YEAR);

    /** What else says to what a charge applies. */
    private static final List<EStructuralFeature> SCOPES = Stream.concat(Stream.of(Literals.TARIFF_CHARGE__CHARGE),
            Columns.of(Literals.TARIFF_CHARGE).stream()
                    .filter(f -> !PRICES.contains(f) && !HOURS.contains(f) && !YEARS.contains(f)))
            .toList();

    TariffsPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm parts = columns(parent);
        FeatureTable tariffs = rows(parts, Messages.Table_tariffs, alternatives(Literals.SCHEDULED_TARIFF),
                Columns.of(Literals.TARIFF, CommonPackage.Literals.SOURCED__NOTE),
                List.of(new ComputedWords(Messages.UseTariff_column, Messages.UseTariff_column_tip, this::inUse)));
        tariffs.addTool(Messages.FlatTariff, Messages.FlatTariff_tip,
                () -> tariffs.addElement(alternatives(Literals.FLAT_TARIFF)));
        tariffs.addTool(Messages.UseTariff, Messages.UseTariff_tip, () -> use(tariffs));
        Sheets right = new Sheets(parts);
        FeatureTable charges = charges(right, Messages.Table_charges, tariffs, PRICES);
        FeatureTable hours = charges(right, Messages.Table_chargeHours, tariffs, HOURS);
        FeatureTable scopes = charges(right, Messages.Table_chargeScopes, tariffs, SCOPES);
        FeatureTable years = charges(right, Messages.Table_chargeYears, tariffs, YEARS);
        FeatureTable terms = one(right.area(), Messages.Table_tariff, tariffs::selected);
        right.share(charges, hours, scopes, years, terms);
        drive(tariffs, terms, charges, hours, scopes, years);
        parts.setWeights(25, 75);
        return parts;
    }

    private FeatureTable charges(Sheets place, String title, FeatureTable tariffs, List<EStructuralFeature> columns) {
        return rows(place.area(), title, new ElementList(session(),
                () -> tariffs.selected() instanceof ScheduledTariff byHours ? byHours : null,
                Literals.SCHEDULED_TARIFF__CHARGES, Literals.TARIFF_CHARGE), columns,
                columns == HOURS ? List.of() : List.of(new ComputedWords(Messages.Charge_when, Messages.Charge_when_tip, ChargeWhen::of)));
    }

    /** New tariffs are alternatives, of one kind; the table shows those of both and the one in use. */
    private ElementList alternatives(EClass kind) {
        return new ElementList(session(), this::depot, Literals.DEPOT__ALTERNATIVE_TARIFFS, kind)
                .showing(this::tariffs);
    }

    private String inUse(EObject tariff) {
        return depot() != null && depot().getTariff() == tariff ? Messages.UseTariff_inUse : "";
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
