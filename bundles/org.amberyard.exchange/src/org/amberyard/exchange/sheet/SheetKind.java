package org.amberyard.exchange.sheet;

import java.util.List;
import java.util.Optional;
import org.amberyard.model.common.Quality;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.eclipse.emf.ecore.EStructuralFeature;

/** A kind of sheet that districts keep: which columns it has, and what its rows mean to a study. */
public interface SheetKind {

    /** All kinds. */
    List<SheetKind> ALL = List.of(new BusSheet(), new RouteSheet(), new TripSheet(), new FuelLogSheet(), new FuelInvoiceSheet(),
            new UpkeepLogSheet(), new OdometerSheet(), new UtilityBillSheet(), new PriceSheet(), new PlanSheet(),
            new TariffSheet(), new ConsumptionLogSheet(), new MeterBillSheet());

    /** The kind of an id, if there is one. */
    static Optional<SheetKind> byId(String id) {
        return ALL.stream().filter(k -> k.id().equals(id)).findFirst();
    }

    /** Name for scripts, the same in all versions. */
    String id();

    /** What it is called. */
    String label();

    /** What comes of it, in a sentence. */
    String purpose();

    /** The columns that it may have, those that it must have among them. */
    List<SheetColumn> columns(Study study);

    /** What could stand in a column, invented; empty for one that is left empty in the example. */
    String example(SheetColumn column);

    /**
     * How far what such a sheet says can be trusted; most say what meters, odometers and invoices have shown.
     *
     * @param field name of a field of the model, or {@code *} for an element as a whole
     */
    default Quality quality(String field) {
        return Quality.MEASURED;
    }

    /** Id of the column that tells a field of the model where none fills it as it is; empty where no column does. */
    default Optional<String> telling(EStructuralFeature field) {
        return Optional.empty();
    }

    /** True for a finding of the study that keeps such a sheet out though it is no error there: what it read would have no effect. */
    default boolean refuses(Finding finding) {
        return false;
    }

    /** Writes what the rows say into the study of the outcome; cells and rows that make no sense are told there. */
    void read(MappedSheet sheet, SheetOutcome outcome);

    /** True where a row may need a vehicle type that the study lacks, which can come with the sheet. */
    default boolean mayAddTypes() {
        return false;
    }
}
