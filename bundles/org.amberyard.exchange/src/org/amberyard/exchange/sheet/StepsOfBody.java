package org.amberyard.exchange.sheet;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.VehicleType;

/**
 * Steps of plans whose bus a list gives another body: one that brought a bus of the old body brings one of the same kind with the new body, where
 * the study has such a type. Else a list of a whole fleet would leave the steps of a study just begun wrong one by one.
 */
final class StepsOfBody {
    private final Study study;
    private final Map<Bus, VehicleType> before = new IdentityHashMap<>();

    /** Remembers the types of the buses. */
    StepsOfBody(Study study) {
        this.study = study;
        study.getBuses().forEach(bus -> before.put(bus, bus.getType()));
    }

    /** Lets the steps for a bus follow the type that a row gives it. */
    void follow(int row, Bus bus, SheetOutcome outcome) {
        VehicleType was = before.get(bus);
        VehicleType is = bus.getType();
        if (was == null || is == null || was.getBodyType() == is.getBodyType()) {
            return;
        }
        study.getPlans().stream().flatMap(p -> p.getReplacements().stream())
                .filter(r -> r.getBus() == bus && r.getNewType() != null && r.getNewType().getBodyType() == was.getBodyType())
                .forEach(r -> likeIt(r, is).ifPresent(type -> {
                    outcome.remark("Row " + row + ": the step for " + bus.getName() + " in " + r.getYear() + " brings “" + type.getName() + "” in place of “"
                            + r.getNewType().getName() + "”, as the bus has body type " + is.getBodyType().getLiteral() + ".");
                    outcome.set(row, r, PlansPackage.Literals.REPLACEMENT__NEW_TYPE, type);
                }));
    }

    /** What follows a bus of the type by its rule, if that is of the same kind as what the step brought, else the first such type of the body. */
    private Optional<VehicleType> likeIt(Replacement step, VehicleType is) {
        return Stream.concat(Stream.ofNullable(is.getSuccessor()), study.getVehicleTypes().stream())
                .filter(t -> t.eClass() == step.getNewType().eClass() && t.getBodyType() == is.getBodyType()).findFirst();
    }
}
