package org.amberyard.exchange;

import org.amberyard.model.study.EmissionFactors;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * The default emission factors, tables like those of a study and read like them: published figures with their citation where one
 * could be read, placeholders marked as such for the rest.
 */
public final class DefaultFactors {
    private static final DefaultTables TABLES = new DefaultTables("factors", "emission_factors", "engine_emissions",
            "wear_emissions", "fuel_emissions", "grid_emissions", "social_costs");

    private DefaultFactors() {
    }

    /** A fresh copy of the default factors; only its tables are of use. */
    public static EmissionFactors all() {
        return EcoreUtil.copy(TABLES.read().getEmissionFactors());
    }
}
