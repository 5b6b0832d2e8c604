package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.depot.Port;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.StraightLine;
import org.amberyard.core.tariff.BillParts;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.yard.YardYear;

/** Costs that the yard shares: ports and site works with their renewal, one-off costs and the meter's bill. */
final class YardCosts {
    private final StudyInput study;
    private final PlanCourse course;
    private final int row;
    private final List<CostItem> items = new ArrayList<>();

    private YardCosts(StudyInput study, PlanCourse course) {
        this.study = study;
        this.course = course;
        this.row = study.buses().size();
    }

    static List<CostItem> of(StudyInput study, PlanInput plan, PlanCourse course) {
        YardCosts costs = new YardCosts(study, course);
        plan.ports().forEach(costs::addPurchase);
        plan.works().forEach(costs::addWork);
        plan.oneOffs().forEach(o -> costs.add(o.year(), CostCategory.TRAINING_AND_TOOLS,
                Amount.of(o.amount(), PriceKind.MONEY.one(), o.name(), Derivation.MONEY)));
        for (int year = 0; year < study.years(); year++) {
            costs.addBill(year, course.yards().get(year));
        }
        return costs.items;
    }

    private void addPurchase(PlanInput.PortPurchase purchase) {
        Port port = study.depot().ports().get(purchase.port());
        addAsset(CostCategory.PORTS, purchase.year(), purchase.count(), PriceKind.PORT_HARDWARE.of(purchase.port()),
                port.lifeYears(), port.name());
        addAsset(CostCategory.PORTS, purchase.year(), purchase.count(), PriceKind.PORT_INSTALLATION.of(purchase.port()),
                port.installationLifeYears(), port.name() + ", installation");
    }

    private void addWork(PlanInput.WorkOrder order) {
        DepotInput.SiteWork work = study.depot().works().get(order.work());
        addAsset(CostCategory.SITE_WORKS, order.year(), 1, PriceKind.SITE_WORK.of(order.work()), work.lifeYears(), work.name());
    }

    /**
     * Buys an asset, buys it again at the end of each life within the study and credits what is left at the end. What was
     * bought before the base year stands: it is not paid for again, and what is left of it counts at the price of the base year.
     */
    private void addAsset(CostCategory category, int bought, double count, UnitPrice price, double lifeYears, String name) {
        int step = Math.max(1, (int) Math.ceil(lifeYears));
        int last = bought;
        for (int year = bought; year < study.years(); year += step) {
            if (year >= 0) {
                add(year, category, Amount.of(count, price, name, ""));
            }
            last = year;
        }
        double left = count * StraightLine.lifeLeft(study.years() - last, lifeYears);
        add(study.years() - 1, CostCategory.INFRASTRUCTURE_LIFE_LEFT, new Amount.Credit(new Amount.PaidIn(Math.max(0, last), category,
                Amount.of(left, price, name + ", number times share of the life left", ""))));
    }

    /**
     * The meter's bill: energy charges go to the buses by their energy, what the ports draw at rest and the rest to the yard.
     * Energy that the yard cannot bring is paid at the same price, wherever it then comes from.
     */
    private void addBill(int year, YardYear yard) {
        PortFleet ports = course.ports();
        if (yard.yardKwh() == 0 && ports.count(year) == 0) {
            return;
        }
        BillParts bill = yard.parts();
        double perKwh = yard.yardKwh() > 0 ? bill.energy() / yard.yardKwh() : 0;
        double restKwh = yard.yardKwh();
        for (int bus = 0; bus < yard.busKwh().size(); bus++) {
            double kwh = yard.busKwh().get(bus);
            items.add(new CostItem(yard.input().buses().get(bus).place(), year, CostCategory.ELECTRIC_ENERGY,
                    energy("energy of " + yard.input().buses().get(bus).name() + " at the meter", kwh, perKwh, yard)));
            restKwh -= kwh - yard.missingKwh().get(bus);
        }
        add(year, CostCategory.ELECTRIC_ENERGY, energy("energy of the ports at rest, at the meter", restKwh, perKwh, yard));
        add(year, CostCategory.ELECTRIC_DEMAND, Amount.of(bill.demand(), PriceKind.DEMAND_CHARGES.one(),
                () -> new BillWhy(yard, BillParts::demand).of("demand charges of the year's bills at base-date prices")));
        add(year, CostCategory.ELECTRIC_FIXED, yard.input().metering().tariff().minimum().amount() > 0
                ? new LiftedCharges(yard)
                : Amount.of(bill.fixed(), PriceKind.FIXED_CHARGES.one(),
                        () -> new BillWhy(yard, BillParts::fixed).of("fixed charges of the year's bills at base-date prices")));
        ports.counts(year).forEach((port, count) -> add(year, CostCategory.PORT_FEES,
                Amount.of(count, PriceKind.PORT_FEE.of(port), study.depot().ports().get(port).name(), "")));
        add(year, CostCategory.PLUG_SWAPS, Amount.of(yard.swaps(), PriceKind.PLUG_SWAP.one(), "plugs moved in the year", ""));
    }

    private static Amount energy(String name, double kwh, double perKwh, YardYear yard) {
        return Amount.of(kwh * perKwh, PriceKind.ENERGY_CHARGES.one(), () -> Derivation.product(name + " at base-date prices",
                Derivation.MONEY, Derivation.of(name, kwh, "kWh", "what the battery takes and heat, over the port's efficiency"),
                Derivation.of("energy charges of the year's bills over their energy", perKwh, "money/kWh", "the first over the second",
                        new BillWhy(yard, BillParts::energy).of("energy charges of the year's bills at base-date prices"),
                        Derivation.of("energy at the meter in the year", yard.yardKwh(), "kWh", "sum of the months"))));
    }

    private void add(int year, CostCategory category, Amount amount) {
        items.add(new CostItem(row, year, category, amount));
    }
}
