package org.amberyard.core.money;

import java.util.Arrays;
import java.util.List;

/** Sums of a ledger over the categories of one group. */
public final class CostGroups {
    private CostGroups() {
    }

    /** True when a category is investment: purchases, awards for them and what is left of them; else it is a running cost. */
    public static boolean investment(CostCategory category) {
        return switch (category.group()) {
            case CAPITAL -> true;
            case RESIDUAL -> category != CostCategory.AID_DUE;
            case FUNDING -> category.time() == FlowTime.START;
            case ENERGY, UPKEEP -> false;
        };
    }

    /** Categories of a group. */
    public static List<CostCategory> categories(CostCategory.Group group) {
        return Arrays.stream(CostCategory.values()).filter(c -> c.group() == group).toList();
    }

    /** Sum of one year over all rows. */
    public static double amount(CostLedger ledger, int year, CostCategory.Group group) {
        return categories(group).stream().mapToDouble(c -> ledger.amount(year, c)).sum();
    }

    /** Sum of one row and year. */
    public static double amount(CostLedger ledger, int row, int year, CostCategory.Group group) {
        return categories(group).stream().mapToDouble(c -> ledger.amount(row, year, c)).sum();
    }
}
