package org.amberyard.model.validation;

import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.study.Study;

/** Vehicle identification numbers are right, as applications to programmes require. */
final class VinRule implements Rule {
    private static final String REMEDY = "; compare it with the registration. Programmes refuse a wrong one.";

    @Override
    public void check(Study study, Findings findings) {
        for (Bus bus : study.getBuses()) {
            if (bus.getVin() != null && !bus.getVin().isBlank()) {
                check(bus, new Vin(bus.getVin()), findings);
            }
        }
    }

    private static void check(Bus bus, Vin vin, Findings findings) {
        String head = "VIN " + bus.getVin().strip();
        if (vin.length() != Vin.LENGTH) {
            findings.warning(bus, Literals.BUS__VIN, head + " has " + vin.length() + " characters instead of "
                    + Vin.LENGTH + REMEDY);
        } else if (!vin.hasOnlyValidCharacters()) {
            findings.warning(bus, Literals.BUS__VIN, head + " has a character that is never used in one (I, O and Q are "
                    + "not)" + REMEDY);
        } else if (vin.checkDigit() != vin.expectedCheckDigit()) {
            findings.warning(bus, Literals.BUS__VIN, head + " has the check digit " + vin.checkDigit()
                    + " in the ninth place where " + vin.expectedCheckDigit() + " belongs" + REMEDY);
        }
    }
}
