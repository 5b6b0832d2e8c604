package org.amberyard.core.finance;

import java.util.List;

/** How the basis of an asset is spread over its years of service. */
public sealed interface DepreciationMethod permits StraightLineMethod, Macrs {

    /** Share of the basis deducted in each year of service, the first first; one in all. */
    List<Double> shares();

    /** When in a year property counts as placed in service and disposed of. */
    Convention convention();
}
