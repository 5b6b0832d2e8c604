package org.amberyard.study;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.FleetYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.common.Quality;
import org.amberyard.model.meta.IsoDay;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.model.vehicles.VehiclesPackage;

/** Finds buses that a plan has to order before their price was quoted: either the quote is not the one, or the date. */
final class QuoteFindings {
    private final Study study;
    private final StudyInput input;
    private final PlanResult plan;

    QuoteFindings(Study study, StudyResult result, int plan) {
        this.study = study;
        this.input = result.input();
        this.plan = result.plans().get(plan);
    }

    List<Finding> list() {
        return study.getVehicleTypes().stream().flatMap(t -> quoted(t).flatMap(q -> early(t, q)).stream()).toList();
    }

    /** Day of the quote of a type's price; empty without one. */
    private static Optional<LocalDate> quoted(VehicleType type) {
        return SourceNotes.find(type, VehiclesPackage.Literals.VEHICLE_TYPE__PURCHASE_PRICE.getName())
                .filter(n -> n.getQuality() == Quality.QUOTED).flatMap(n -> IsoDay.of(n.getDate()));
    }

    private Optional<Finding> early(VehicleType type, LocalDate quoted) {
        return plan.fleet().events().stream().filter(FleetEvent.Bought.class::isInstance).map(FleetEvent.Bought.class::cast)
                .filter(b -> input.types().get(b.vehicle().type()).name().equals(type.getName()) && b.vehicle().used().isEmpty())
                .filter(b -> FleetYear.orderBy(input, b).isBefore(quoted)).min(Comparator.comparing(b -> FleetYear.orderBy(input, b)))
                .map(b -> new Finding(Severity.WARNING, type, VehiclesPackage.Literals.VEHICLE_TYPE__PURCHASE_PRICE,
                        "Plan “" + plan.name() + "”: " + b.vehicle().unit() + " must be ordered by " + FleetYear.orderBy(input, b)
                                + ", before the price of its type “" + type.getName() + "” was quoted on " + quoted
                                + ". Name the quote that the order rests on, or move the purchase."));
    }
}
