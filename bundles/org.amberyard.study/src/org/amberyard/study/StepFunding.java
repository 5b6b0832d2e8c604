package org.amberyard.study;

import java.util.List;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;
import org.eclipse.emf.common.util.ECollections;

/** The programmes that steps of plans name: the one place where they are read, written and chosen. */
final class StepFunding {
    private StepFunding() {
    }

    static List<Programme> of(Replacement step) {
        return List.copyOf(step.getProgrammes());
    }

    static List<Programme> of(PortPurchase step) {
        return List.copyOf(step.getProgrammes());
    }

    static void set(Replacement step, List<Programme> programmes) {
        ECollections.setEList(step.getProgrammes(), programmes);
    }

    static void set(PortPurchase step, List<Programme> programmes) {
        ECollections.setEList(step.getProgrammes(), programmes);
    }

    /** True when a programme pays for a bus of a type bought in a year, as long as it has buses left. */
    static boolean pays(Programme programme, VehicleType type, int year) {
        return type instanceof ElectricType && paysIn(programme, year)
                && programme.getBusAwards().stream().anyMatch(a -> a.getBodyType() == type.getBodyType());
    }

    /** True when a programme pays for ports bought in a year. */
    static boolean paysPorts(Programme programme, int year) {
        return (programme.getInfrastructureShare() > 0 || programme.getAmountPerPort() > 0) && paysIn(programme, year);
    }

    private static boolean paysIn(Programme programme, int year) {
        Settings settings = ((Study) programme.eContainer()).getSettings();
        return ProgrammeWindow.of(programme, StudyCompiler.fiscalYears(settings)).contains(year);
    }
}
