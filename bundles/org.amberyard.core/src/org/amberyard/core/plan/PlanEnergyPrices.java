package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.depot.Port;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.NominalCosts;
import org.amberyard.core.tariff.LeastEnergyPrice;

/** What a kWh that charging must bring costs in each year: at least, or as it came out in a plan that has been evaluated. */
final class PlanEnergyPrices {
    private static final List<CostCategory> BILL = List.of(CostCategory.ELECTRIC_ENERGY, CostCategory.ELECTRIC_DEMAND,
            CostCategory.ELECTRIC_FIXED, CostCategory.PLUG_SWAPS);

    private final StudyInput study;

    PlanEnergyPrices(StudyInput study) {
        this.study = study;
    }

    /** Least price of the tariff at the meter, base-date money/kWh. */
    double leastPerKwh() {
        return LeastEnergyPrice.of(study.depot().metering().tariff());
    }

    /** At the least price of the tariff, through the port that loses least. */
    PlanProblem.EnergyPrice least() {
        double efficiency = study.depot().ports().stream().mapToDouble(Port::efficiency).max().orElseThrow();
        List<CostItem> items = new ArrayList<>();
        for (int year = 0; year < study.years(); year++) {
            items.add(new CostItem(0, year, CostCategory.ELECTRIC_ENERGY,
                    Amount.of(leastPerKwh() / efficiency, PriceKind.ENERGY_CHARGES.one(), "a kWh", "")));
        }
        CostLedger ledger = new PricedItems(List.of("kWh"), study.years(), items).at(new PriceBook(study));
        return new PlanProblem.EnergyPrice(present(ledger), nominal(ledger));
    }

    /**
     * As it came out in a plan: what the bill is above that of the plan in which all places are left to the rule, over what its buses
     * need more. Years without electric buses have the price of the nearest year before that has some, or after.
     *
     * @param otherwise prices where no year has any
     */
    PlanProblem.EnergyPrice of(PlanResult plan, PlanResult left, PlanProblem.EnergyPrice otherwise) {
        double[] kwh = minus(batteryKwh(plan), batteryKwh(left));
        double[] present = minus(present(plan.ledger()), present(left.ledger()));
        double[] nominal = minus(nominal(plan.ledger()), nominal(left.ledger()));
        int[] from = nearest(kwh);
        return new PlanProblem.EnergyPrice(perKwh(present, kwh, from, otherwise.present()),
                perKwh(nominal, kwh, from, otherwise.nominal()));
    }

    /** Present cost by which the bills of a plan lie above the least price of the energy that its buses need, constant money at the base date. */
    double aboveLeast(PlanResult plan) {
        double[] kwh = batteryKwh(plan);
        double[] least = least().present();
        double[] bills = present(plan.ledger());
        return IntStream.range(0, kwh.length).mapToDouble(year -> bills[year] - kwh[year] * least[year]).sum();
    }

    private double[] batteryKwh(PlanResult plan) {
        double[] kwh = new double[study.years()];
        plan.fleet().years().stream().filter(v -> study.types().get(v.vehicle().type()).electric().isPresent())
                .forEach(v -> kwh[v.year()] += v.use().batteryKwh());
        return kwh;
    }

    private double[] present(CostLedger ledger) {
        return IntStream.range(0, study.years()).mapToDouble(year -> BILL.stream()
                .mapToDouble(c -> study.money().present(ledger.amount(year, c), c, year)).sum()).toArray();
    }

    private double[] nominal(CostLedger ledger) {
        NominalCosts nominal = new NominalCosts(ledger);
        return IntStream.range(0, study.years()).mapToDouble(year -> BILL.stream().mapToDouble(c -> nominal.amount(year, c)).sum())
                .toArray();
    }

    private static double[] minus(double[] one, double[] other) {
        return IntStream.range(0, one.length).mapToDouble(i -> one[i] - other[i]).toArray();
    }

    /** For each year the nearest before it that needs energy, or the first after it; -1 where none does. */
    private static int[] nearest(double[] kwh) {
        int[] from = new int[kwh.length];
        int last = IntStream.range(0, kwh.length).filter(y -> kwh[y] > 0).findFirst().orElse(-1);
        for (int year = 0; year < kwh.length; year++) {
            last = kwh[year] > 0 ? year : last;
            from[year] = last;
        }
        return from;
    }

    private static double[] perKwh(double[] cost, double[] kwh, int[] from, double[] otherwise) {
        return IntStream.range(0, cost.length).mapToDouble(y -> from[y] < 0 ? otherwise[y] : cost[from[y]] / kwh[from[y]]).toArray();
    }
}
