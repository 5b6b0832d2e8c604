package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.tariff.BillIndex;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.core.yard.YardYear;

/**
 * The bills of a plan's yard as functions of prices. Where charging goes by prices, a year of the yard is planned for each
 * proportion of demand to energy prices, in the steps in which schedules see it, when it is first asked for.
 */
final class YardForms {
    /** Demand prices may rise by this factor over energy prices, in tenths; what rises further is left to the whole evaluation. */
    private static final int STEPS = 128;
    private static final int APPROPRIATIONS = 2;

    private final StudyInput study;
    private final PlanCourse course;
    private final YardMemory memory;
    private final AtomicReferenceArray<YardMoney> known;
    private final List<YearForms> moving = new ArrayList<>();
    /** What the years come to that prices do not move: present cost, greenhouse gas and appropriations. */
    private final double[] staying;

    /** Prices of a year. */
    private record YearForms(int year, boolean priced, long step, PriceForm energy, PriceForm demand, PriceForm fixed, PriceForm swaps,
            double present, double appropriation, double presentOfStated, double appropriationOfStated) {

        boolean moves() {
            return !(energy.isConstant() && demand.isConstant() && fixed.isConstant() && swaps.isConstant());
        }
    }

    YardForms(StudyInput study, PlanCourse course, PricePoints points, YardMemory memory) {
        this.study = study;
        this.course = course;
        this.memory = memory;
        this.known = new AtomicReferenceArray<>(study.years() * STEPS);
        this.staying = new double[APPROPRIATIONS + study.years()];
        for (int year = 0; year < study.years(); year++) {
            YearForms forms = forms(year, points);
            if (forms.moves() || forms.step() >= STEPS) {
                moving.add(forms);
            } else {
                add(forms, new double[0], staying, 0);
            }
        }
    }

    private YearForms forms(int year, PricePoints points) {
        YardYear yard = course.yards().get(year);
        AmountForms forms = new AmountForms(points);
        MoneyWeights weights = new MoneyWeights(study.money());
        return new YearForms(year, yard.input().rule().policy().priced() && !yard.input().buses().isEmpty(),
                PlanYards.indexStep(yard.input().demandIndex(), 1),
                price(PriceKind.ENERGY_CHARGES, year, CostCategory.ELECTRIC_ENERGY, forms),
                price(PriceKind.DEMAND_CHARGES, year, CostCategory.ELECTRIC_DEMAND, forms),
                price(PriceKind.FIXED_CHARGES, year, CostCategory.ELECTRIC_FIXED, forms),
                price(PriceKind.PLUG_SWAP, year, CostCategory.PLUG_SWAPS, forms),
                weights.present(CostCategory.ELECTRIC_ENERGY, year), weights.appropriation(CostCategory.ELECTRIC_ENERGY, year),
                weights.presentOfStated(CostCategory.CREDIT_REVENUE, year),
                weights.appropriationOfStated(CostCategory.CREDIT_REVENUE, year));
    }

    private static PriceForm price(PriceKind kind, int year, CostCategory category, AmountForms forms) {
        return forms.of(Amount.of(1, kind.one(), kind.name(), ""), year, category);
    }

    /**
     * Adds bills, plug swaps, credits and what power plants put into the air to the results of a plan.
     *
     * @param from place of the plan's present cost, before its greenhouse gas and appropriations
     * @return false when demand prices rise too far over energy prices; schedules are then those of the farthest rise
     */
    boolean add(double[] prices, double[] results, int from) {
        for (int i = 0; i < staying.length; i++) {
            results[from + i] += staying[i];
        }
        boolean within = true;
        for (YearForms of : moving) {
            within &= add(of, prices, results, from);
        }
        return within;
    }

    private boolean add(YearForms of, double[] prices, double[] results, int from) {
        double energy = of.energy.at(prices);
        double demand = of.demand.at(prices);
        long step = of.priced ? PlanYards.indexStep(demand, energy) : of.step;
        int seen = (int) Math.max(0, Math.min(STEPS - 1, step));
        YardMoney yard = at(of, seen);
        double fixed = of.fixed.at(prices);
        double money = yard.energy() * energy + yard.demand() * demand + yard.swaps() * of.swaps.at(prices)
                + (yard.lifted().isPresent() ? yard.lifted().get().parts(new BillIndex(energy, demand, fixed)).fixed()
                        : yard.fixed() * fixed);
        results[from] += money * of.present - yard.credits() * of.presentOfStated;
        results[from + 1] += yard.gridKg();
        results[from + APPROPRIATIONS + of.year] += money * of.appropriation - yard.credits() * of.appropriationOfStated;
        return seen == step;
    }

    private YardMoney at(YearForms of, int step) {
        int place = of.year * STEPS + step;
        YardMoney money = known.get(place);
        if (money == null) {
            YardYear yard = course.yards().get(of.year);
            YardYear then = step == of.step ? yard : memory.year(yard.input().at(PlanYards.demandIndex(step)));
            money = YardMoney.of(study, course, of.year, then);
            known.set(place, money);
        }
        return money;
    }
}
