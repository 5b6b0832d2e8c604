package org.amberyard.core.plan;

import org.amberyard.core.finance.TaxRules;
import org.amberyard.core.upkeep.UpkeepRules;

/**
 * Rules that hold for the whole fleet.
 *
 * @param spareCoverShare share of the service days on which a spare runs the route
 * @param insuranceShare premium per year as a share of the bus's present value
 * @param reserveShare share of the usable battery energy kept as a reserve
 * @param upkeep upkeep by tasks
 * @param taxes how the operator is taxed
 */
public record FleetRules(double spareCoverShare, double insuranceShare, double reserveShare, UpkeepRules upkeep,
        TaxRules taxes) {

    /** Rules of a fleet whose operator is not taxed. */
    public FleetRules(double spareCoverShare, double insuranceShare, double reserveShare, UpkeepRules upkeep) {
        this(spareCoverShare, insuranceShare, reserveShare, upkeep, TaxRules.NONE);
    }

    /** Rules of a fleet whose operator is not taxed and whose upkeep goes by rates alone. */
    public FleetRules(double spareCoverShare, double insuranceShare, double reserveShare) {
        this(spareCoverShare, insuranceShare, reserveShare, UpkeepRules.BY_RATE);
    }
}
