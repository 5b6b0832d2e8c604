package org.amberyard.exchange.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.units.Unit;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.common.Quality;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.eclipse.emf.ecore.EStructuralFeature;

/** An electric tariff as its sheet has it: a row for each price of energy by season and hours, demand charge, rider and fixed charge. */
final class TariffSheet implements SheetKind {
    static final String TARIFF = "tariff";
    static final String CHARGE = Literals.TARIFF_CHARGE__CHARGE.getName();
    static final String KIND = "part";
    static final String PRICE = "price";
    static final String UNIT = "unit";
    static final String SEASON = "season";
    static final String HOURS = "hours";
    static final String FIRST = Literals.TARIFF_CHARGE__FIRST_MONTH.getName();
    static final String LAST = Literals.TARIFF_CHARGE__LAST_MONTH.getName();
    static final String DAYS = Literals.TARIFF_CHARGE__DAYS.getName();
    static final String FROM = Literals.TARIFF_CHARGE__FROM_MIN.getName();
    static final String TO = Literals.TARIFF_CHARGE__TO_MIN.getName();

    @Override
    public String id() {
        return "tariffs";
    }

    @Override
    public String label() {
        return "Electric tariff";
    }

    @Override
    public String purpose() {
        return "Makes the rows of a tariff its charges; a tariff that the study lacks becomes one to compare with.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        return List.of(
                text(TARIFF, "Tariff", "Name of the tariff; may be left out for the tariff in use, or where the sheet has its name.", "tariff name",
                        "rate schedule", "rate name", "schedule"),
                SheetColumn.of(Literals.TARIFF_CHARGE__CHARGE, "charge name", "component", "line item", "rate component", "item", "tou period",
                        "period").must(),
                text(KIND, "Kind", "What it is: " + TariffPart.WORDS + "; where it is empty, the unit of the price tells.", "charge type", "type"),
                text(PRICE, "Price", "Price, with its unit behind it, in a column of its own, or as the kind says.", "rate", "amount", "charge rate"),
                text(UNIT, "Unit of the price", "Unit of the price: currency per kWh, per kW or per month, or %.", "unit", "units", "per", "uom"),
                text(SEASON, "Season", "Months in which it applies, such as Jun-Sep.", "months", "season months"),
                SheetColumn.of(Literals.TARIFF_CHARGE__FIRST_MONTH, "from month", "season start"),
                SheetColumn.of(Literals.TARIFF_CHARGE__LAST_MONTH, "to month", "season end"),
                SheetColumn.of(Literals.TARIFF_CHARGE__DAYS, "day type", "days of week"),
                text(HOURS, "Hours", "Hours of the day in which it applies, such as 14:00-20:00.", "window", "time", "time of day", "times"),
                SheetColumn.of(Literals.TARIFF_CHARGE__FROM_MIN, "start", "start time", "from hour", "begins"),
                SheetColumn.of(Literals.TARIFF_CHARGE__TO_MIN, "end", "end time", "to hour", "ends"),
                SheetColumn.of(Literals.TARIFF_CHARGE__PRICE_PER_KWH, "energy price", "energy rate", "per kwh", "usd per kwh", "$ kwh"),
                SheetColumn.of(Literals.TARIFF_CHARGE__PRICE_PER_KW, "demand price", "demand rate", "per kw", "usd per kw", "$ kw"),
                SheetColumn.of(Literals.TARIFF_CHARGE__SHARE, "percentage", "percent"),
                SheetColumn.of(Literals.TARIFF_CHARGE__FROM_KWH, "block start", "tier from", "above kwh"),
                SheetColumn.of(Literals.TARIFF_CHARGE__FROM_HOURS_OF_USE, "hours of use"),
                SheetColumn.of(Literals.TARIFF_CHARGE__RATCHET_SHARE, "ratchet share"),
                SheetColumn.of(Literals.TARIFF_CHARGE__RATCHET_MONTHS),
                SheetColumn.of(Literals.TARIFF_CHARGE__FIRST_CONTRACT_YEAR, "from contract year"),
                SheetColumn.of(Literals.TARIFF_CHARGE__LAST_CONTRACT_YEAR, "to contract year"),
                SheetColumn.of(CommonPackage.Literals.SOURCED__NOTE, "notes", "remarks", "comments"));
    }

    private static SheetColumn text(String id, String label, String meaning, String... also) {
        return SheetColumn.derived(id, label, SheetColumn.Content.TEXT, Unit.NONE, meaning, also);
    }

    @Override
    public String example(SheetColumn column) {
        return Map.of(TARIFF, "GS-TOU", CHARGE, "Energy", KIND, "energy", PRICE, "0.118", UNIT, "USD/kWh", SEASON, "Jan-Dec", DAYS, "every day", HOURS,
                "all day").getOrDefault(column.id(), "");
    }

    /** A tariff is published, not measured. */
    @Override
    public Quality quality(String field) {
        return Quality.PUBLISHED;
    }

    @Override
    public Optional<String> telling(EStructuralFeature field) {
        return Optional.ofNullable(Map.of(FROM, HOURS, TO, HOURS, FIRST, SEASON, LAST, SEASON, Literals.TARIFF_CHARGE__PRICE_PER_KWH.getName(), PRICE,
                Literals.TARIFF_CHARGE__PRICE_PER_KW.getName(), PRICE, Literals.TARIFF_CHARGE__SHARE.getName(), PRICE).get(field.getName()));
    }

    /** No bill is made of a tariff with hours that are priced twice or not at all, or with prices in cents, even to compare it. */
    @Override
    public boolean refuses(Finding finding) {
        return finding.element() instanceof ScheduledTariff || finding.element() instanceof TariffCharge;
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        if (outcome.study().getDepot() == null) {
            outcome.problem(0, "The study has no depot whose bill this tariff could make; add one on the page of the depot.");
            return;
        }
        TariffRows rows = new TariffRows(outcome, columns(outcome.study()));
        sheet.rows().forEach(rows::read);
        new TariffUpdate(outcome).make(rows.rows());
    }
}
