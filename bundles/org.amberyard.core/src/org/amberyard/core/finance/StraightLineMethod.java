package org.amberyard.core.finance;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.math.Checks;

/**
 * Equal parts over a life, down to nothing.
 *
 * @param years life, whole years
 * @param convention when in its first year the asset counts as in service
 */
public record StraightLineMethod(int years, Convention convention) implements DepreciationMethod {

    public StraightLineMethod {
        Checks.positive("Years of depreciation", years);
    }

    @Override
    public List<Double> shares() {
        List<Double> shares = new ArrayList<>();
        shares.add(convention.firstYear() / years);
        for (int year = 1; year < years; year++) {
            shares.add(1.0 / years);
        }
        shares.add(convention.lastYear() / years);
        return shares;
    }
}
