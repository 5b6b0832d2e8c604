package org.amberyard.model.validation;

import org.amberyard.model.fleet.Role;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.UsedBus;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.eclipse.emf.ecore.EAttribute;

/** A used bus that a plan buys is told whole: age and odometer, price, and of an electric one what its pack still holds. */
final class UsedBusRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        study.getPlans().stream().flatMap(plan -> plan.getReplacements().stream()).forEach(step -> check(step, findings));
    }

    private static void check(Replacement step, Findings findings) {
        if (UsedBus.isBoughtBy(step)) {
            checkPrice(step, findings);
            checkWear(step, step.getNewType(), findings);
            checkPack(step, step.getNewType(), findings);
        } else {
            checkNone(step, Literals.REPLACEMENT__USED_PRICE, step.getUsedPrice(), findings);
            checkNone(step, Literals.REPLACEMENT__USED_HEALTH, step.getUsedHealth(), findings);
        }
    }

    private static void checkNone(Replacement step, EAttribute field, double value, Findings findings) {
        if (value > 0) {
            findings.error(step, field, findings.fact(step, field) + ", but the step buys no used bus; enter its age and odometer, "
                    + "or clear the field.");
        }
    }

    private static void checkPrice(Replacement step, Findings findings) {
        VehicleType type = step.getNewType();
        if (step.getUsedPrice() == 0) {
            findings.warning(step, Literals.REPLACEMENT__USED_PRICE, findings.fact(step, Literals.REPLACEMENT__USED_PRICE)
                    + ", as if it were given away; enter what it costs.");
        } else if (step.getUsedPrice() > type.getPurchasePrice()) {
            findings.warning(step, Literals.REPLACEMENT__USED_PRICE, findings.fact(step, Literals.REPLACEMENT__USED_PRICE)
                    + ", more than a new " + ElementNames.of(type) + " at "
                    + findings.value(type, VehiclesPackage.Literals.VEHICLE_TYPE__PURCHASE_PRICE) + "; check both.");
        }
    }

    private static void checkWear(Replacement step, VehicleType type, Findings findings) {
        if (step.getUsedAgeYears() > 0 && step.getUsedOdometerKm() == 0) {
            findings.warning(step, Literals.REPLACEMENT__USED_ODOMETER_KM, findings.fact(step, Literals.REPLACEMENT__USED_ODOMETER_KM)
                    + " though its age is " + findings.value(step, Literals.REPLACEMENT__USED_AGE_YEARS) + "; enter the reading.");
        }
        boolean route = step.getBus() != null && step.getBus().getRole() == Role.ROUTE;
        double mostYears = type.getLifeYears() + (route ? 0 : type.getSpareExtraYears());
        if (step.getUsedAgeYears() >= mostYears) {
            findings.warning(step, Literals.REPLACEMENT__USED_AGE_YEARS, tooWorn(step, Literals.REPLACEMENT__USED_AGE_YEARS,
                    findings.value(type, VehiclesPackage.Literals.VEHICLE_TYPE__LIFE_YEARS, mostYears), findings));
        }
        if (route && step.getUsedOdometerKm() >= type.getLifeKm()) {
            findings.warning(step, Literals.REPLACEMENT__USED_ODOMETER_KM, tooWorn(step, Literals.REPLACEMENT__USED_ODOMETER_KM,
                    findings.value(type, VehiclesPackage.Literals.VEHICLE_TYPE__LIFE_KM), findings));
        }
    }

    private static String tooWorn(Replacement step, EAttribute field, String most, Findings findings) {
        return findings.fact(step, field) + ", and a " + ElementNames.of(step.getNewType()) + " is replaced at " + most
                + ", so it is due a year after it comes; choose a younger bus.";
    }

    private static void checkPack(Replacement step, VehicleType type, Findings findings) {
        EAttribute field = Literals.REPLACEMENT__USED_HEALTH;
        if (!(type instanceof ElectricType electric)) {
            checkNoPack(step, findings);
        } else if (step.getUsedHealth() == 0) {
            findings.error(step, field, "the used " + ElementNames.of(type) + " has a battery, but what it still holds is not "
                    + "given; enter its capacity over that of a new one, as measured or promised by the seller.");
        } else if (step.getUsedHealth() <= electric.getEndOfLifeShare()) {
            findings.warning(step, field, findings.fact(step, field) + ", not above "
                    + findings.value(type, VehiclesPackage.Literals.ELECTRIC_TYPE__END_OF_LIFE_SHARE)
                    + " at which packs of " + ElementNames.of(type) + " are replaced, so it needs another pack in its first year.");
        }
    }

    private static void checkNoPack(Replacement step, Findings findings) {
        if (step.getUsedHealth() > 0) {
            findings.warning(step, Literals.REPLACEMENT__USED_HEALTH, findings.fact(step, Literals.REPLACEMENT__USED_HEALTH)
                    + ", but " + ElementNames.of(step.getNewType()) + " has an engine; clear the field.");
        }
    }
}
