package org.amberyard.exchange.sheet;

import java.util.List;
import java.util.Map;
import org.amberyard.core.units.Unit;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.common.Quality;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.study.Study;

/** A replacement schedule: which bus is replaced by what in which year, a row for each step, of one plan or several. */
final class PlanSheet implements SheetKind {
    static final String PLAN = "plan";
    static final String YEAR = Literals.REPLACEMENT__YEAR.getName();
    static final String BUS = Literals.REPLACEMENT__BUS.getName();
    static final String ACTION = "action";
    static final String TYPE = Literals.REPLACEMENT__NEW_TYPE.getName();
    static final String MOVES = Literals.REPLACEMENT__CASCADE_TO.getName();
    static final String PROGRAMMES = Literals.REPLACEMENT__PROGRAMMES.getName();

    @Override
    public String id() {
        return "plan-steps";
    }

    @Override
    public String label() {
        return "Replacement schedule";
    }

    @Override
    public String purpose() {
        return "Makes the rows of a bus its steps in the plan; buses of the plan that it does not name keep theirs. An empty cell is none; what "
                + "the sheet has no column of stays as it is where the same type is bought.";
    }

    @Override
    public List<SheetColumn> columns(Study study) {
        return List.of(
                SheetColumn.derived(PLAN, "Plan", SheetColumn.Content.TEXT, Unit.NONE,
                        "Plan that the step belongs to; a new name makes a new plan. May be left out where the study has one plan, or the sheet has its name.",
                        "plan name", "scenario"),
                SheetColumn.of(Literals.REPLACEMENT__YEAR, "fiscal year", "fy", "replacement year", "replace in", "year replaced", "step year").must(),
                SheetColumn.of(Literals.REPLACEMENT__BUS, "bus id", "bus number", "unit", "unit number", "old bus", "vehicle", "vehicle number",
                        "replaces").must(),
                SheetColumn.derived(ACTION, "Action", SheetColumn.Content.TEXT, Unit.NONE,
                        "What happens: replace, retire (no bus takes its place) or keep (no step); where it is empty, the new type tells.", "what", "step"),
                SheetColumn.of(Literals.REPLACEMENT__NEW_TYPE, "new bus", "new bus type", "new vehicle", "new vehicle type", "replace with",
                        "replaced by", "replacement type", "replacement", "bought", "buy"),
                SheetColumn.of(Literals.REPLACEMENT__CASCADE_TO, "moves to", "cascade to", "old bus goes to", "takes over"),
                SheetColumn.of(Literals.REPLACEMENT__PROGRAMMES, "programme", "program", "programs", "grant", "grants", "funding", "funded by",
                        "funding source").andSays("Empty for none."),
                SheetColumn.of(Literals.REPLACEMENT__USED_AGE_YEARS, "used age", "age when bought").andSays("Empty for a new bus."),
                SheetColumn.of(Literals.REPLACEMENT__USED_ODOMETER_KM, "used odometer", "odometer when bought").andSays("Empty for a new bus."),
                SheetColumn.of(Literals.REPLACEMENT__USED_PRICE, "used price", "price paid").andSays("Empty for a new bus at the price of its type."),
                SheetColumn.of(Literals.REPLACEMENT__USED_HEALTH, "used health", "battery health").andSays("Empty for a new bus."),
                SheetColumn.of(CommonPackage.Literals.SOURCED__NOTE, "notes", "remarks", "comments").andSays("Empty for none."));
    }

    @Override
    public String example(SheetColumn column) {
        return Map.of(PLAN, "Electric in stages", YEAR, "2027", BUS, "B02", ACTION, "replace", TYPE, "Electric C 150", PROGRAMMES,
                "Clean Fleet Fund").getOrDefault(column.id(), "");
    }

    /** What is planned has not been measured. */
    @Override
    public Quality quality(String field) {
        return Quality.ASSUMED;
    }

    @Override
    public void read(MappedSheet sheet, SheetOutcome outcome) {
        PlanRows rows = new PlanRows(sheet, outcome, columns(outcome.study()));
        sheet.rows().forEach(rows::read);
        rows.checkKept();
        new PlanStepUpdate(outcome).make(rows.steps());
        rows.tellOthers();
    }
}
