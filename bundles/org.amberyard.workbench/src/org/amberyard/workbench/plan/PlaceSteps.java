package org.amberyard.workbench.plan;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.plan.PlanInput;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.study.BusSteps;
import org.eclipse.emf.ecore.EObject;

/**
 * What decides about a place of the fleet, by names and calendar years: so results can be told from those of another state of
 * the study.
 *
 * @param bus the place
 * @param type type that stands there in the base year
 * @param taken steps for the place
 * @param arrivals buses that come from other places
 */
record PlaceSteps(String bus, String type, List<Taken> taken, List<Arrival> arrivals) {

    private static final String NONE = "";

    /** A step: the year, the type bought and the place to which the old bus moves; blank for none. */
    record Taken(int year, String type, String cascadeTo) {
    }

    /** A bus that comes from another place at the start of a year. */
    record Arrival(int year, String from) {
    }

    PlaceSteps {
        taken = taken.stream().sorted(Comparator.comparingInt(Taken::year)).toList();
        arrivals = arrivals.stream().sorted(Comparator.comparingInt(Arrival::year).thenComparing(Arrival::from)).toList();
    }

    /** As the study has it, within some years. */
    static PlaceSteps of(BusSteps steps, List<Arrival> arrivals, int firstYear, int lastYear) {
        Bus bus = steps.bus();
        return new PlaceSteps(ElementNames.of(bus), ElementNames.of(bus.getType()),
                steps.steps().stream().filter(s -> s.year() >= firstYear && s.year() <= lastYear)
                        .map(s -> new Taken(s.year(), name(s.type()), name(s.cascadeTo()))).toList(),
                arrivals.stream().filter(a -> a.year() >= firstYear && a.year() <= lastYear).toList());
    }

    private static String name(EObject element) {
        return element == null ? NONE : ElementNames.of(element);
    }

    /** As results were computed with it. */
    static PlaceSteps of(StudyInput study, PlanInput plan, int place) {
        Stream<PlanInput.Replacement> arriving = plan.replacements().stream()
                .filter(r -> r.cascadeTo().isPresent() && r.cascadeTo().getAsInt() == place);
        return new PlaceSteps(study.buses().get(place).name(), study.types().get(study.buses().get(place).type()).name(),
                plan.replacements().stream().filter(r -> r.place() == place).map(r -> taken(study, r)).toList(),
                arriving.map(r -> new Arrival(study.baseYear() + r.year(), study.buses().get(r.place()).name())).toList());
    }

    private static Taken taken(StudyInput study, PlanInput.Replacement step) {
        return new Taken(study.baseYear() + step.year(),
                step.newType().isPresent() ? study.types().get(step.newType().getAsInt()).name() : NONE,
                step.cascadeTo().isPresent() ? study.buses().get(step.cascadeTo().getAsInt()).name() : NONE);
    }
}
