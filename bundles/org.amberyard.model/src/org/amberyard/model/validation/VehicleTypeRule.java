package org.amberyard.model.validation;

import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.model.vehicles.VehiclesPackage.Literals;

/** The fields of a vehicle type agree with each other and with the type that follows it. */
final class VehicleTypeRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (VehicleType type : study.getVehicleTypes()) {
            checkSuccessor(type, findings);
            checkValue(type, findings);
            if (type instanceof ElectricType electric) {
                checkPack(electric, findings);
                checkRefurbished(electric, findings);
                checkWarranty(electric, findings);
                checkAcceptance(electric, findings);
            }
        }
    }

    private static void checkSuccessor(VehicleType type, Findings findings) {
        VehicleType successor = type.getSuccessor();
        if (successor != null && successor.getBodyType() != type.getBodyType()) {
            findings.error(type, Literals.VEHICLE_TYPE__SUCCESSOR, "it is a type " + type.getBodyType().getLiteral()
                    + " bus but is replaced by " + ElementNames.of(successor) + ", a type "
                    + successor.getBodyType().getLiteral() + " bus; choose a type " + type.getBodyType().getLiteral()
                    + " bus.");
        }
    }

    private static void checkValue(VehicleType type, Findings findings) {
        if (type.getValueAtRetirement() > type.getPurchasePrice()) {
            findings.warning(type, Literals.VEHICLE_TYPE__VALUE_AT_RETIREMENT,
                    findings.fact(type, Literals.VEHICLE_TYPE__VALUE_AT_RETIREMENT) + ", above its price of "
                            + findings.value(type, Literals.VEHICLE_TYPE__PURCHASE_PRICE) + "; check both.");
        }
    }

    private static void checkPack(ElectricType type, Findings findings) {
        if (type.getEndOfLifeShare() >= 1) {
            findings.warning(type, Literals.ELECTRIC_TYPE__END_OF_LIFE_SHARE,
                    findings.fact(type, Literals.ELECTRIC_TYPE__END_OF_LIFE_SHARE)
                            + ", so a pack counts as worn out when new; enter the share at which packs are replaced.");
        }
    }

    private static void checkRefurbished(ElectricType type, Findings findings) {
        if (type.getRefurbishedPriceShare() > 0 && type.getRefurbishedHealth() <= type.getEndOfLifeShare()) {
            findings.error(type, Literals.ELECTRIC_TYPE__REFURBISHED_HEALTH,
                    findings.fact(type, Literals.ELECTRIC_TYPE__REFURBISHED_HEALTH) + ", not above the end-of-life capacity of "
                            + findings.value(type, Literals.ELECTRIC_TYPE__END_OF_LIFE_SHARE)
                            + "; a refurbished pack must be above it.");
        }
    }

    private static void checkWarranty(ElectricType type, Findings findings) {
        if (type.getWarrantyYears() > 0 && type.getWarrantyKm() == 0) {
            findings.warning(type, Literals.ELECTRIC_TYPE__WARRANTY_KM,
                    "its warranty covers no distance, so it never pays; enter the distance that it covers.");
        }
    }

    private static void checkAcceptance(ElectricType type, Findings findings) {
        if (type.getAcAcceptanceKw() == 0 && type.getDcAcceptanceKw() == 0) {
            findings.warning(type, Literals.ELECTRIC_TYPE__AC_ACCEPTANCE_KW,
                    "it accepts neither AC nor DC power, so no port can charge it; enter one of the two.");
        }
    }
}
