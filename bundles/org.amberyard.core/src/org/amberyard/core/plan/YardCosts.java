package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.depot.Port;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.StraightLine;
import org.amberyard.core.tariff.BillParts;
import org.amberyard.core.yard.YardYear;

/** Costs that the yard shares: ports and site works with their renewal, one-off costs and the meter's bill. */
final class YardCosts {
    private final StudyInput study;
    private final PlanInput plan;
    private final CostLedger.Builder ledger;
    private final FundingCosts funding;
    private final int row;

    YardCosts(StudyInput study, PlanInput plan, CostLedger.Builder ledger, FundingCosts funding) {
        this.study = study;
        this.plan = plan;
        this.ledger = ledger;
        this.funding = funding;
        this.row = study.buses().size();
    }

    void add(PortFleet ports, List<YardYear> yards) {
        plan.ports().forEach(this::addPurchase);
        plan.works().forEach(this::addWork);
        plan.oneOffs().forEach(o -> ledger.add(row, o.year(), CostCategory.TRAINING_AND_TOOLS, o.amount()));
        for (int year = 0; year < study.years(); year++) {
            addBill(year, ports, yards.get(year));
        }
    }

    private void addPurchase(PlanInput.PortPurchase purchase) {
        Port port = study.depot().ports().get(purchase.port());
        double hardware = purchase.count() * port.hardwarePrice();
        double installation = purchase.count() * port.installationPrice();
        double cost = (hardware + installation) * index(purchase.year(), purchase.year());
        funding.addForPorts(purchase, cost);
        addAsset(CostCategory.PORTS, purchase.year(), hardware, port.lifeYears());
        addAsset(CostCategory.PORTS, purchase.year(), installation, port.installationLifeYears());
    }

    private void addWork(PlanInput.WorkOrder order) {
        DepotInput.SiteWork work = study.depot().works().get(order.work());
        funding.addForWork(order, work.price() * index(order.year(), order.year()));
        addAsset(CostCategory.SITE_WORKS, order.year(), work.price(), work.lifeYears());
    }

    /** Buys an asset, buys it again at the end of each life within the study and credits what is left at the end. */
    private void addAsset(CostCategory category, int bought, double price, double lifeYears) {
        int step = Math.max(1, (int) Math.ceil(lifeYears));
        int last = bought;
        for (int year = bought; year < study.years(); year += step) {
            ledger.add(row, year, category, price * index(year, year));
            last = year;
        }
        double left = price * index(last, last) * StraightLine.lifeLeft(study.years() - last, lifeYears);
        ledger.add(row, study.years() - 1, CostCategory.INFRASTRUCTURE_LIFE_LEFT, -left);
    }

    /**
     * The meter's bill: energy charges go to the buses by their energy, what the ports draw at rest and the rest to the yard.
     * Energy that the yard cannot bring is paid at the same price, wherever it then comes from.
     */
    private void addBill(int year, PortFleet ports, YardYear yard) {
        if (yard.yardKwh() == 0 && ports.count(year) == 0) {
            return;
        }
        BillParts bill = yard.parts();
        double perKwh = yard.yardKwh() > 0 ? bill.energy() / yard.yardKwh() : 0;
        double restKwh = yard.yardKwh();
        for (int bus = 0; bus < yard.busKwh().size(); bus++) {
            addRunning(yard.input().buses().get(bus).place(), year, CostCategory.ELECTRIC_ENERGY, perKwh * yard.busKwh().get(bus),
                    PriceDeck.Subject.ELECTRIC_ENERGY);
            restKwh -= yard.busKwh().get(bus) - yard.missingKwh().get(bus);
        }
        addRunning(row, year, CostCategory.ELECTRIC_ENERGY, perKwh * restKwh, PriceDeck.Subject.ELECTRIC_ENERGY);
        addRunning(row, year, CostCategory.ELECTRIC_DEMAND, bill.demand(), PriceDeck.Subject.ELECTRIC_DEMAND);
        addRunning(row, year, CostCategory.ELECTRIC_FIXED, bill.fixed(), PriceDeck.Subject.ELECTRIC_FIXED);
        addRunning(row, year, CostCategory.PORT_FEES, ports.sum(year, Port::feePerYear), PriceDeck.Subject.UPKEEP);
        addRunning(row, year, CostCategory.PLUG_SWAPS, yard.swaps() * study.depot().charging().swapCost(),
                PriceDeck.Subject.UPKEEP);
    }

    private void addRunning(int billed, int year, CostCategory category, double amount, PriceDeck.Subject subject) {
        double index = study.prices().index(subject, year, study.money().time(category, year));
        ledger.add(billed, year, category, amount * index);
    }

    private double index(int year, double time) {
        return study.prices().index(PriceDeck.Subject.INFRASTRUCTURE, year, time);
    }
}
