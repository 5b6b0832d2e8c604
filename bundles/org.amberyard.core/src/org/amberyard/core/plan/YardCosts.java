package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.depot.Port;
import org.amberyard.core.depot.TariffInput;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.StraightLine;

/** Costs that the yard shares: ports and their later replacement, site works, one-off costs and the shared bill. */
final class YardCosts {
    private static final int MONTHS = 12;
    private static final double HOURS_PER_YEAR = 8760;

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

    void add(PortFleet ports, List<DemandYear> demands) {
        plan.ports().forEach(this::addPurchase);
        plan.works().forEach(this::addWork);
        plan.oneOffs().forEach(this::addOneOff);
        for (int year = 0; year < study.years(); year++) {
            addBill(year, ports, demands.get(year));
        }
    }

    private void addPurchase(PlanInput.PortPurchase purchase) {
        if (!within(purchase.year())) {
            return;
        }
        Port port = study.depot().ports().get(purchase.port());
        double hardware = purchase.count() * port.hardwarePrice();
        double installation = purchase.count() * port.installationPrice();
        double cost = (hardware + installation) * index(purchase.year(), purchase.year());
        ledger.add(row, purchase.year(), CostCategory.PORTS, cost);
        funding.addForPorts(purchase, cost);
        int lastBought = renewHardware(purchase.year(), hardware, port.lifeYears());
        addLifeLeft(hardware, lastBought, port.lifeYears());
        addLifeLeft(installation, purchase.year(), port.installationLifeYears());
    }

    /** Buys hardware again at the end of each life within the study; returns the year of the last purchase. */
    private int renewHardware(int bought, double hardware, double lifeYears) {
        int last = bought;
        int renewal = bought + Math.max(1, (int) Math.ceil(lifeYears));
        while (within(renewal)) {
            ledger.add(row, renewal, CostCategory.PORTS, hardware * index(renewal, renewal));
            last = renewal;
            renewal = last + Math.max(1, (int) Math.ceil(lifeYears));
        }
        return last;
    }

    private void addWork(PlanInput.WorkOrder order) {
        if (within(order.year())) {
            DepotInput.SiteWork work = study.depot().works().get(order.work());
            double cost = work.price() * index(order.year(), order.year());
            ledger.add(row, order.year(), CostCategory.SITE_WORKS, cost);
            funding.addForWork(order, cost);
            addLifeLeft(work.price(), order.year(), work.lifeYears());
        }
    }

    private void addOneOff(PlanInput.OneOff cost) {
        if (within(cost.year())) {
            ledger.add(row, cost.year(), CostCategory.TRAINING_AND_TOOLS, cost.amount());
        }
    }

    private void addLifeLeft(double price, int bought, double lifeYears) {
        int last = study.years() - 1;
        double left = price * index(bought, bought) * StraightLine.lifeLeft(study.years() - bought, lifeYears);
        ledger.add(row, last, CostCategory.INFRASTRUCTURE_LIFE_LEFT, -left);
    }

    private void addBill(int year, PortFleet ports, DemandYear demand) {
        if (ports.count(year) == 0 && demand.meterKwh() == 0) {
            return;
        }
        double standbyKwh = ports.sum(year, Port::standbyKwhPerYear);
        double standbyKw = standbyKwh / HOURS_PER_YEAR;
        TariffInput.BillParts bill = study.depot().tariff().year(standbyKwh, demand.sumOfPeaksKw() + MONTHS * standbyKw);
        addRunning(year, CostCategory.ELECTRIC_ENERGY, bill.energy(), PriceDeck.Subject.ELECTRIC_ENERGY);
        addRunning(year, CostCategory.ELECTRIC_DEMAND, bill.demand(), PriceDeck.Subject.ELECTRIC_DEMAND);
        addRunning(year, CostCategory.ELECTRIC_FIXED, bill.fixed(), PriceDeck.Subject.ELECTRIC_FIXED);
        addRunning(year, CostCategory.PORT_FEES, ports.sum(year, Port::feePerYear), PriceDeck.Subject.UPKEEP);
    }

    private void addRunning(int year, CostCategory category, double amount, PriceDeck.Subject subject) {
        double index = study.prices().index(subject, year, study.money().time(category, year));
        ledger.add(row, year, category, amount * index);
    }

    private double index(int year, double time) {
        return study.prices().index(PriceDeck.Subject.INFRASTRUCTURE, year, time);
    }

    private boolean within(int year) {
        return year >= 0 && year < study.years();
    }
}
