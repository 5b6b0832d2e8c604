package org.amberyard.study;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;

/** The programmes that steps of plans name: the one place where they are read, written and chosen. */
final class StepFunding {
    private StepFunding() {
    }

    static List<Programme> of(Replacement step) {
        return Stream.ofNullable(step.getProgramme()).toList();
    }

    static void set(Replacement step, List<Programme> programmes) {
        step.setProgramme(programmes.isEmpty() ? null : programmes.get(0));
    }

    static void set(PortPurchase step, List<Programme> programmes) {
        step.setProgramme(programmes.isEmpty() ? null : programmes.get(0));
    }

    /** True when a programme pays for a bus of a type bought in a year, as long as it has buses left. */
    static boolean pays(Programme programme, VehicleType type, int year) {
        return type instanceof ElectricType && paysIn(programme, year)
                && programme.getBusAwards().stream().anyMatch(a -> a.getBodyType() == type.getBodyType());
    }

    /** True when a programme pays for ports bought in a year. */
    static boolean paysPorts(Programme programme, int year) {
        return programme.getInfrastructureShare() > 0 && paysIn(programme, year);
    }

    private static boolean paysIn(Programme programme, int year) {
        return year >= programme.getFirstYear() && year <= programme.getLastYear();
    }
}
