package org.amberyard.model.meta;

import java.util.List;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.Replacement;
import org.eclipse.emf.ecore.EAttribute;

/** What a step of a plan says of a bus that is bought used. */
public final class UsedBus {
    private static final List<EAttribute> FIELDS = List.of(Literals.REPLACEMENT__USED_AGE_YEARS,
            Literals.REPLACEMENT__USED_ODOMETER_KM, Literals.REPLACEMENT__USED_PRICE, Literals.REPLACEMENT__USED_HEALTH);

    private UsedBus() {
    }

    /** True when a step buys a used bus: one that has an age or has driven. */
    public static boolean isBoughtBy(Replacement step) {
        return step.getNewType() != null && (step.getUsedAgeYears() > 0 || step.getUsedOdometerKm() > 0);
    }

    /** Makes a step that bought a used bus buy a new one. */
    public static void forget(Replacement step) {
        FIELDS.forEach(step::eUnset);
    }
}
