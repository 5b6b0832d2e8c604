package org.amberyard.model.meta;

import java.math.BigDecimal;
import org.amberyard.model.air.EngineEmission;
import org.amberyard.model.air.SocialCost;
import org.amberyard.model.air.WearEmission;

/** Names of emission factors and social costs: what tells them from their siblings. */
final class EmissionName {
    private EmissionName() {
    }

    /** Fuel, model years and body types: {@code diesel 2007 to 2009, body AB}. */
    static String of(EngineEmission row) {
        return row.getFuel().getLiteral() + " " + row.getFirstModelYear() + " to " + row.getLastModelYear()
                + (bodies(row.getBodyTypes()).isEmpty() ? "" : ", body " + row.getBodyTypes());
    }

    /** Body types. */
    static String of(WearEmission row) {
        return bodies(row.getBodyTypes()).isEmpty() ? "all bodies" : "body " + row.getBodyTypes();
    }

    /** Gas, year and rate: {@code CO2 2030 at 2 %}. */
    static String of(SocialCost row) {
        BigDecimal percent = BigDecimal.valueOf(row.getRate()).movePointRight(2).stripTrailingZeros();
        return row.getGas().getLiteral() + " " + row.getYear() + " at " + percent.toPlainString() + " %";
    }

    private static String bodies(String letters) {
        return letters == null ? "" : letters;
    }
}
