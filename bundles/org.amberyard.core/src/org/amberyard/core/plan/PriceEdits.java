package org.amberyard.core.plan;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.money.MoneyRules;

/**
 * Tells whether two studies differ in prices alone: price paths, discounting, insurance, taxes, how plans are paid for, and what
 * buses cost and bring; what came of past years and bills of the past, which move no figure of a plan, may differ too. Tariffs and ports are not among them, because yards are planned by them; nor are
 * the fiscal years, because a yard's calendar begins with them.
 */
final class PriceEdits {
    private PriceEdits() {
    }

    /** True when a study at the prices of another is that other. */
    static boolean alone(StudyInput edited, StudyInput last) {
        if (edited.types().size() != last.types().size() || edited.plans().size() != last.plans().size()) {
            return false;
        }
        List<VehicleTypeInput> types = IntStream.range(0, edited.types().size())
                .mapToObj(i -> edited.types().get(i).at(last.types().get(i).prices())).toList();
        FleetRules rules = new FleetRules(edited.rules().spareCoverShare(), last.rules().insuranceShare(),
                edited.rules().reserveShare(), edited.rules().upkeep(), last.rules().taxes());
        List<PlanInput> plans = IntStream.range(0, edited.plans().size())
                .mapToObj(i -> edited.plans().get(i).paid(last.plans().get(i).payment())).toList();
        MoneyRules money = new MoneyRules(last.money().rates(), last.money().basis(), last.money().midYear(), edited.money().fiscal());
        return new StudyInput(edited.name(), edited.currency(), edited.baseYear(), edited.years(), money, edited.duty(),
                types, edited.buses(), edited.depot().billed(last.depot().bills()), last.prices(), edited.funding(), edited.air(), rules, plans,
                edited.baseline(), edited.trips(), last.actuals()).equals(last);
    }
}
