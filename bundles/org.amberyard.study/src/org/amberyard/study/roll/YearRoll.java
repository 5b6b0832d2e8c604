package org.amberyard.study.roll;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.UpkeepCalibrations;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Severity;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyFindings;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A study rolled to a later base year: a new study whose fleet and yard are those that a plan leaves at the end of the years that
 * are over, so that each later year of that plan does and costs what it did before. The study that is rolled stays as it is.
 */
public final class YearRoll {
    private final Study study;
    private final RollLog log;
    private final StudyResult before;
    private final int plan;
    private final int years;
    private final WhatIfRoll whatIf;
    private final Set<String> errorsBefore;
    private List<String> problems = List.of();

    private YearRoll(Study study, RollLog log, WhatIfRoll whatIf, Set<String> errorsBefore, StudyResult before, int plan, int years) {
        this.study = study;
        this.log = log;
        this.whatIf = whatIf;
        this.errorsBefore = errorsBefore;
        this.before = before;
        this.plan = plan;
        this.years = years;
    }

    /**
     * Rolls a study; takes as long as evaluating it.
     *
     * @param study the study, without errors; it is read and not changed
     * @param choice how
     * @param evaluator evaluates studies
     * @throws IllegalArgumentException when the new base year is not a later year of the study
     */
    public static YearRoll of(Study study, RollChoice choice, Function<StudyInput, StudyResult> evaluator) {
        int base = study.getSettings().getBaseYear();
        check(study.getSettings(), choice.toYear());
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        Study copy = (Study) copier.copy(study);
        copier.copyReferences();
        String from = "Rolled from base year " + base + " to " + choice.toYear();
        RollLog log = new RollLog(copy, from);
        WhatIfRoll whatIf = new WhatIfRoll(copy, log);
        new LateSteps(log, (Plan) copier.get(choice.carriedOut()), choice.toYear()).move(PastSteps.of(choice.carriedOut(), base, choice.toYear())
                .stream().filter(choice.late()::contains).map(step -> (Sourced) copier.get(step)).toList());
        StudyResult before = evaluator.apply(StudyCompiler.compile(copy));
        YearRoll roll = new YearRoll(copy, log, whatIf, Set.copyOf(errors(study)), before, study.getPlans().indexOf(choice.carriedOut()),
                choice.toYear() - base);
        roll.write(choice.sameEnd());
        StudyResult foreseen = choice.late().isEmpty() ? before : evaluator.apply(StudyCompiler.compile(study));
        new ForeseenYears(copy, foreseen.plans().get(roll.plan)).write(log, base, choice.toYear());
        roll.finish();
        return roll;
    }

    private static List<String> errors(Study of) {
        return StudyFindings.of(of).stream().filter(f -> f.severity() == Severity.ERROR)
                .map(f -> Phrase.start(ElementNames.withKind(f.element())) + ": " + f.message()).toList();
    }

    /** What points at elements by name follows them; errors that the study did not have before are told. */
    private void finish() {
        whatIf.write();
        problems = errors(study).stream().filter(e -> !errorsBefore.contains(e)).toList();
    }

    private static void check(Settings settings, int toYear) {
        int first = settings.getBaseYear() + 1;
        int last = settings.getBaseYear() + settings.getHorizonYears() - 1;
        if (toYear < first || toYear > last) {
            throw new IllegalArgumentException("The new base year is " + toYear + "; it must be " + (first < last ? "from " + first + " to "
                    + last + ", the years of the study after its base year." : first == last ? first + ", the last year of the study."
                    : "a later year of the study, which has one year only; lengthen it first."));
        }
    }

    private void write(boolean sameEnd) {
        Settings settings = study.getSettings();
        int oldBase = settings.getBaseYear();
        int newBase = oldBase + years;
        PlanResult done = before.plans().get(plan);
        Plan carriedOut = study.getPlans().get(plan);
        int oldEnd = oldBase + settings.getHorizonYears();
        List<Bus> places = new ArrayList<>(study.getBuses());
        new SettingsRoll(study, log, years).write(sameEnd);
        writeUpkeepFactors();
        new MoneyRoll(study, log, done, oldBase, years).write(carriedOut);
        FleetRoll fleet = new FleetRoll(study, log, done.fleet(), oldBase, newBase, oldEnd);
        Set<Bus> changed = new HashSet<>();
        fleet.changedPlaces().forEach(place -> changed.add(places.get(place)));
        new PlansRoll(study, log, carriedOut, changed, oldBase, newBase).write();
        fleet.write();
        tellOfTheEnd(sameEnd, oldBase, newBase);
    }

    /** Work orders of the old base year keep their say on types after their buses have grown older or left. */
    private void writeUpkeepFactors() {
        UpkeepCalibrations known = UpkeepCalibrations.of(before.input(), before.duty());
        for (VehicleType type : study.getVehicleTypes()) {
            double factor = known.of(study.getVehicleTypes().indexOf(type)).factor();
            if (factor != 1) {
                log.set(type, VehiclesPackage.Literals.VEHICLE_TYPE__UPKEEP_FACTOR, factor, "by the work orders of its buses");
            }
        }
    }

    private void tellOfTheEnd(boolean sameEnd, int oldBase, int newBase) {
        log.remark("Present costs are those at the start of " + newBase + ", no longer of " + oldBase + ", and sums leave out the years "
                + "that are over.");
        log.remark("What is left of ports and works from before " + newBase + " at the end counts at the price of " + newBase + ".");
        log.remark("Prices that are typed into the new study are to be in money of " + study.getSettings().getPriceYear() + ", as those that "
                + "it has.");
        if (!sameEnd) {
            int end = oldBase + study.getSettings().getHorizonYears();
            log.remark("The study ends " + years + (years == 1 ? " year" : " years") + " later, so what is left at its end is counted "
                    + "then, and what is decided by the end (whether a pack is still replaced) may come out otherwise in the years before "
                    + end + ".");
        }
    }

    /** Assumptions that what came of the last year that is over can take the place of; none where nobody has entered actuals. */
    public List<ActualProposal> proposals() {
        return actuals().proposals();
    }

    /** Puts what came of the last year in the place of assumptions of the new study. Each is to be taken once. */
    public void take(List<ActualProposal> taken) {
        taken.forEach(actuals()::take);
        finish();
    }

    private Actuals actuals() {
        return new Actuals(study, log, before, plan, years);
    }

    /** The new study. */
    public Study study() {
        return study;
    }

    /** What is not the same in it, field by field, in the order in which it was changed. */
    public List<RollChange> changes() {
        return log.changes();
    }

    /** What no field shows, and what is not carried over, in sentences; problems come first. */
    public List<String> remarks() {
        return Stream.concat(problems.stream().map(p -> "To be put right in the new study: " + p), log.remarks().stream()).toList();
    }

    /** Errors of the new study that the old one did not have; it cannot be evaluated until they are put right. */
    public List<String> problems() {
        return problems;
    }

    /** Place of the plan that was carried out. */
    public int carriedOut() {
        return plan;
    }

    /** Years that are over, from the old base year on. */
    public int years() {
        return years;
    }

    /** Results of the study that was rolled, with what was not carried out in time in the new base year. */
    public StudyResult before() {
        return before;
    }
}
