package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.study.NearWords;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Reads the rows of a replacement schedule; plans that they name and the study lacks are added to it. */
final class PlanRows {
    private static final Pattern FISCAL = Pattern.compile("(?i)fy\\s*['\u2019]?(\\d{4}|\\d{2})");
    private static final int CENTURY = 2000;

    private final SheetOutcome outcome;
    private final Study study;
    private final FieldValue values;
    private final List<SheetColumn> others;
    private final RowKeys keys;
    private final ElementIndex<Plan> plans;
    private final ElementIndex<Bus> buses;
    private final ElementIndex<VehicleType> types;
    private final ElementIndex<Programme> programmes;
    private final Map<ElementKey, Plan> added = new HashMap<>();
    private final List<PlanRow> steps = new ArrayList<>();

    PlanRows(MappedSheet sheet, SheetOutcome outcome, List<SheetColumn> columns) {
        this.outcome = outcome;
        this.study = outcome.study();
        this.values = new FieldValue(study);
        List<String> own = List.of(PlanSheet.YEAR, PlanSheet.BUS, PlanSheet.TYPE, PlanSheet.PROGRAMMES);
        this.others = columns.stream().filter(c -> c.field().isPresent() && !own.contains(c.id())).toList();
        this.keys = new RowKeys(sheet, PlanSheet.BUS, PlanRows::tellDifferentSteps);
        this.plans = new ElementIndex<>(study.getPlans());
        this.buses = new ElementIndex<>(study.getBuses());
        this.types = new ElementIndex<>(study.getVehicleTypes());
        this.programmes = new ElementIndex<>(study.getProgrammes());
    }

    List<PlanRow> steps() {
        return steps;
    }

    /** A bus may stand in several plans, and in several years of one. */
    private static boolean tellDifferentSteps(MappedRow one, MappedRow other) {
        return !one.cell(PlanSheet.YEAR).equals(other.cell(PlanSheet.YEAR))
                || !ElementKey.of(one.cell(PlanSheet.PLAN).text()).equals(ElementKey.of(other.cell(PlanSheet.PLAN).text()));
    }

    void read(MappedRow row) {
        RowReading cells = outcome.reading(row);
        Bus bus = cells.of(() -> bus(row), null);
        Optional<VehicleType> type = cells.of(() -> type(row), Optional.empty());
        PlanAction action = cells.of(() -> action(row, bus, type), PlanAction.REPLACE);
        int year = cells.of(() -> action == PlanAction.KEEP && !row.has(PlanSheet.YEAR) ? 0 : year(row), 0);
        Optional<List<Programme>> paying = cells.of(() -> programmes(row), Optional.empty());
        Map<EStructuralFeature, Object> more = new LinkedHashMap<>();
        others.stream().filter(c -> row.knows(c.id())).forEach(c -> {
            EStructuralFeature field = c.field().orElseThrow();
            more.put(field, cells.of(() -> values.of(row, c), Optional.empty()).orElse(field.getDefaultValue()));
        });
        Optional<Plan> plan = cells.of(() -> plan(row, cells.isSound()), Optional.empty());
        if (cells.isSound() && plan.isPresent()) {
            steps.add(new PlanRow(row.number(), plan.get(), bus, action, year, type, paying, more));
        }
    }

    private Bus bus(MappedRow row) throws CellFault {
        String name = keys.of(row);
        return buses.find(name).orElseThrow(() -> row.wrong(PlanSheet.BUS, buses.unknown(name, "bus")
                + buses.withNumberOf(name).map(b -> " Is “" + b.getName() + "” meant?").orElse("")));
    }

    private Optional<VehicleType> type(MappedRow row) throws CellFault {
        Optional<String> name = row.text(PlanSheet.TYPE);
        if (name.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(types.find(name.get()).orElseThrow(() -> row.wrong(PlanSheet.TYPE, types.unknown(name.get(), "vehicle type"))));
    }

    private PlanAction action(MappedRow row, Bus bus, Optional<VehicleType> type) throws CellFault {
        Optional<String> word = row.text(PlanSheet.ACTION);
        if (word.isEmpty()) {
            return untold(row, bus);
        }
        PlanAction action = PlanAction.of(word.get()).orElseThrow(() -> row.fault(PlanSheet.ACTION, PlanAction.WORDS));
        if (action != PlanAction.REPLACE && type.isPresent()) {
            throw row.wrong(PlanSheet.ACTION, "The row says “" + word.get() + "” but names the new type “" + row.cell(PlanSheet.TYPE).text()
                    + "”; clear one of the two.");
        }
        if (action == PlanAction.REPLACE && !row.has(PlanSheet.TYPE)) {
            throw row.wrong(PlanSheet.TYPE, "The row says “" + word.get() + "” but names no new type; the study has " + types.names() + ".");
        }
        return action;
    }

    /** Without a type a row says nothing, unless the study has that very step, as a table that came from it has. */
    private PlanAction untold(MappedRow row, Bus bus) throws CellFault {
        if (row.has(PlanSheet.TYPE)) {
            return PlanAction.REPLACE;
        }
        boolean known = study.getPlans().stream().filter(p -> ElementKey.of(p.getName()).equals(ElementKey.of(planName(row).orElse(""))))
                .flatMap(p -> p.getReplacements().stream()).anyMatch(s -> s.getBus() == bus && s.getNewType() == null && isIn(s, row));
        if (known) {
            return PlanAction.RETIRE;
        }
        throw row.wrong(PlanSheet.TYPE, "A new type is missing; name one of " + types.names()
                + ", or write “retire” in a column “Action” where no bus takes the place.");
    }

    private static boolean isIn(Replacement step, MappedRow row) {
        return row.cell(PlanSheet.YEAR).text().equals(Integer.toString(step.getYear()));
    }

    private int year(MappedRow row) throws CellFault {
        String text = row.text(PlanSheet.YEAR).orElseThrow(() -> row.wrong(PlanSheet.YEAR, "A year is missing; enter the fiscal year of the step."));
        Matcher fiscal = FISCAL.matcher(text);
        if (fiscal.matches()) {
            int year = Integer.parseInt(fiscal.group(1));
            return year < 100 ? CENTURY + year : year;
        }
        double year = row.required(PlanSheet.YEAR);
        int first = study.getSettings() == null ? 0 : study.getSettings().getBaseYear();
        if (year < 1970 || year > 2200 || year != Math.rint(year)) {
            throw row.fault(PlanSheet.YEAR, study.getSettings() == null ? "a fiscal year such as 2027"
                    : "a fiscal year; the study runs from " + first + " to " + (first + study.getSettings().getHorizonYears() - 1));
        }
        return (int) year;
    }

    /** Programmes of a cell: none, one, or several with semicolons, commas or line ends between them; empty without such a column. */
    private Optional<List<Programme>> programmes(MappedRow row) throws CellFault {
        if (!row.knows(PlanSheet.PROGRAMMES)) {
            return Optional.empty();
        }
        Optional<String> text = row.text(PlanSheet.PROGRAMMES);
        if (text.isEmpty()) {
            return Optional.of(List.of());
        }
        Optional<Programme> whole = programmes.find(text.get());
        if (whole.isPresent()) {
            return Optional.of(List.of(whole.get()));
        }
        List<Programme> found = new ArrayList<>();
        for (String name : text.get().split(text.get().contains(";") ? ";" : "[,\\n+]")) {
            if (!name.isBlank()) {
                found.add(programmes.find(name.strip()).orElseThrow(() -> row.wrong(PlanSheet.PROGRAMMES, programmes.unknown(name.strip(), "programme"))));
            }
        }
        return Optional.of(found.stream().distinct().toList());
    }

    private Optional<String> planName(MappedRow row) {
        if (row.has(PlanSheet.PLAN)) {
            return Optional.of(row.cell(PlanSheet.PLAN).text());
        }
        Optional<String> named = Optional.of(row.sheetName()).filter(n -> plans.find(n).isPresent());
        return named.isPresent() || study.getPlans().size() - added.size() != 1 ? named : Optional.ofNullable(study.getPlans().get(0).getName());
    }

    /** The plan of a row; a new one only for a row that is sound otherwise. */
    private Optional<Plan> plan(MappedRow row, boolean sound) throws CellFault {
        row.text(PlanSheet.PLAN);
        Optional<String> name = planName(row);
        if (name.isEmpty() && row.knows(PlanSheet.PLAN)) {
            throw row.wrong(PlanSheet.PLAN, "A plan is missing; name one of " + plans.names() + ", or a new one.");
        }
        if (name.isEmpty()) {
            outcome.problem(outcome.headerRow(), "Nothing tells which plan the steps are of" + (plans.isEmpty() ? "" : "; the study has " + plans.names())
                    + ". Add a column “Plan”, or give the sheet the name of a plan.");
            return Optional.empty();
        }
        Optional<Plan> known = plans.find(name.get());
        return known.isPresent() || !sound ? known : Optional.of(added.computeIfAbsent(ElementKey.of(name.get()), k -> added(row, name.get())));
    }

    private Plan added(MappedRow row, String name) {
        Plan plan = PlansFactory.eINSTANCE.createPlan();
        plan.setName(name);
        study.getPlans().add(plan);
        outcome.added(row.number(), plan);
        outcome.remark("“" + name + "” is no plan of the study, so it becomes a new one; buses that the schedule does not name stay in it for all years."
                + NearWords.hint(name, study.getPlans().stream().filter(p -> p != plan).map(Plan::getName).filter(Objects::nonNull).toList()));
        return plan;
    }

    /** Rows of a bus that both stays for all years and takes a step in a plan are told as problems. */
    void checkKept() {
        steps.stream().filter(s -> s.action() == PlanAction.KEEP).forEach(kept -> {
            List<String> others = steps.stream().filter(s -> s.action() != PlanAction.KEEP && s.plan() == kept.plan() && s.bus() == kept.bus())
                    .map(s -> s.row() + " (" + s.year() + ")").toList();
            if (!others.isEmpty()) {
                outcome.problem(kept.row(), new CellFault(PlanSheet.ACTION, "The row keeps bus " + kept.bus().getName() + " for all years of plan “"
                        + kept.plan().getName() + "”, but it has a step in row " + String.join(", ", others)
                        + "; keep one of the two, or write “replace” or “retire” where the row is a step too."));
            }
        });
    }

    /** Says of each plan that the rows are of which steps they do not touch, and which buses are replaced more than once. */
    void tellOthers() {
        steps.stream().map(PlanRow::plan).distinct().forEach(plan -> {
            List<PlanRow> of = steps.stream().filter(s -> s.plan() == plan).toList();
            List<Bus> untouched = plan.getReplacements().stream().map(Replacement::getBus).filter(Objects::nonNull).distinct()
                    .filter(b -> of.stream().noneMatch(s -> s.bus() == b) && !keys.holds(b.getName())).toList();
            if (!untouched.isEmpty()) {
                outcome.remark("Buses of plan “" + plan.getName() + "” that the schedule does not name keep their steps: " + ElementIndex.names(untouched)
                        + ".");
            }
        });
        Map<List<Object>, List<PlanRow>> byBus = new LinkedHashMap<>();
        steps.stream().filter(s -> s.action() != PlanAction.KEEP).forEach(s -> byBus.computeIfAbsent(List.of(s.plan(), s.bus()),
                k -> new ArrayList<>()).add(s));
        byBus.values().stream().filter(rows -> rows.size() > 1).forEach(rows -> outcome.remark("Bus " + rows.get(0).bus().getName() + " has "
                + rows.size() + " steps in plan “" + rows.get(0).plan().getName() + "”: " + String.join(", ", rows.stream().map(s -> s.year() + " (row "
                        + s.row() + ")").toList())
                + "; its place is taken anew each time. Delete a row where it is the same step."));
    }
}
