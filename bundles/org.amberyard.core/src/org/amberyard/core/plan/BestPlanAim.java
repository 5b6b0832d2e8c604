package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the best plan may decide, and what it must reach. The plan's other steps, works, one-off costs, financing and yearly cap
 * stay as they are.
 *
 * @param firstYear first year in which it buys buses, counted from the base year
 * @param lastYear last such year
 * @param roles roles of the places whose buses it decides on
 * @param engines true when it may also buy engine buses before the rule of their type would
 * @param ports ports that follow the electric buses, from the first year on in place of those of the plan
 * @param programmes places of the programmes that may pay for buses, up to their most buses, and for ports
 * @param goal electric buses that must be there, if any must
 */
public record BestPlanAim(int firstYear, int lastYear, Set<Role> roles, boolean engines, FillRule.PortRule ports,
        List<Integer> programmes, Optional<Goal> goal) {

    /**
     * Electric buses that must be in the fleet.
     *
     * @param count least number
     * @param year from the start of which year of the study, counted from the base year
     */
    public record Goal(int count, int year) {
    }

    /**
     * @throws IllegalArgumentException when the years run backwards or no port type is named
     */
    public BestPlanAim {
        if (lastYear < firstYear) {
            throw new IllegalArgumentException("The last year, " + lastYear + ", lies before the first, " + firstYear);
        }
        if (ports.port().isEmpty()) {
            throw new IllegalArgumentException("The best plan needs the port type that follows its buses");
        }
        roles = Set.copyOf(roles);
        programmes = List.copyOf(programmes);
    }
}
