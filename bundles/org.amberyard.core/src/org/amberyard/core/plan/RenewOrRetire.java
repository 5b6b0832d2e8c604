package org.amberyard.core.plan;

import java.util.Optional;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.money.CostCategory;

/** Decides whether a bus whose pack is due gets another or retires. Prices decide it, so it can be asked again under others. */
final class RenewOrRetire {
    private final YearOfDriving driving;
    private final PackRenewal renewal;
    private final RetireInstead retireInstead;

    RenewOrRetire(StudyInput study, YearOfDriving driving, StudyFigures figures) {
        this.driving = driving;
        PriceBook book = new PriceBook(study);
        this.renewal = new PackRenewal(book);
        this.retireInstead = new RetireInstead(book, driving, figures);
    }

    PackDecision decide(int year, int place, Vehicle worn, PackReplacement.Cause cause, boolean bound) {
        FleetEvent.PackReplaced replaced = renewal.replacement(worn, year, place, cause, driving.leastHealth(year, place, worn.type()));
        return decided(replaced, renewal.renewed(replaced), bound);
    }

    private PackDecision decided(FleetEvent.PackReplaced replaced, Vehicle renewed, boolean bound) {
        return new PackDecision(replaced, renewed, bound,
                !bound && choice(replaced, renewed).filter(RetireInstead.Choice::retires).isPresent());
    }

    private Optional<RetireInstead.Choice> choice(FleetEvent.PackReplaced replaced, Vehicle renewed) {
        Amount paid = new Amount.PaidIn(replaced.year(), CostCategory.BATTERY_REPLACEMENT, renewal.amount(replaced));
        return retireInstead.of(replaced.year() + 1, replaced.place(), replaced.vehicle(), renewed, paid);
    }

    /** True when a decision would come out the same under the prices of this study. */
    boolean holds(PackDecision decision) {
        return decided(decision.replacement(), decision.renewed(), decision.bound()).equals(decision);
    }

    /** The choice that a decision rests on; none where the bus had to stay or would not be in its last years. */
    Optional<RetireInstead.Choice> choice(PackDecision decision) {
        return decision.bound() ? Optional.empty() : choice(decision.replacement(), decision.renewed());
    }

    /** What happens by a decision. */
    FleetEvent event(PackDecision decision) {
        FleetEvent.PackReplaced replaced = decision.replacement();
        if (!decision.retires()) {
            return replaced;
        }
        RetireInstead.Choice choice = choice(replaced, decision.renewed()).orElseThrow();
        return new FleetEvent.RetiredForPack(replaced.year(), replaced.place(), replaced.vehicle(), replaced.cause(),
                choice.keptPerYear(), choice.nextPerYear());
    }
}
