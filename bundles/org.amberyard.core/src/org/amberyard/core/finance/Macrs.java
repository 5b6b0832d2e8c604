package org.amberyard.core.finance;

import java.util.List;

/**
 * Depreciation under the general system of the US tax code (modified accelerated cost recovery). Half-year shares are those of
 * the published table; mid-quarter shares are worked out by the rule, as the Internal Revenue Service allows, unrounded.
 *
 * @param property class of the property
 * @param convention half-year or a quarter
 */
public record Macrs(PropertyClass property, Convention convention) implements DepreciationMethod {

    @Override
    public List<Double> shares() {
        return convention == Convention.HALF_YEAR ? property.halfYearShares()
                : DecliningBalance.shares(property.years(), property.decliningFactor(), convention.firstYear());
    }
}
