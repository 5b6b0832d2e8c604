package org.amberyard.core.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.Programme;

/**
 * What programmes pay. A programme's amounts are in money of the year in which it pays, so the cost is stated in that
 * money first and the award brought back to constant money.
 */
final class FundingCosts {
    private final StudyInput study;
    private final BusValues values;
    private final CostLedger.Builder ledger;
    private final int yardRow;
    private final Map<Integer, Integer> busesPaid = new HashMap<>();

    FundingCosts(StudyInput study, BusValues values, CostLedger.Builder ledger) {
        this.study = study;
        this.values = values;
        this.ledger = ledger;
        this.yardRow = study.buses().size();
    }

    /** Adds what a programme pays for a bus: electric ones only, while the programme pays and has buses left. */
    void addForBus(FleetEvent.Bought bought) {
        OptionalInt programme = bought.step().map(PlanInput.Replacement::programme).orElse(OptionalInt.empty());
        if (programme.isEmpty() || study.types().get(bought.vehicle().type()).electric().isEmpty()) {
            return;
        }
        Programme payer = study.programmes().get(programme.getAsInt());
        double award = payer.paysIn(bought.year()) ? award(payer, bought) : 0;
        if (award > 0 && busesPaid.merge(programme.getAsInt(), 1, Integer::sum) <= payer.maxBuses()) {
            credit(bought.place(), bought.year(), award);
        }
    }

    private double award(Programme payer, FleetEvent.Bought bought) {
        double inflated = inflated(bought.year());
        double price = values.price(bought.vehicle().type(), bought.year()) * inflated;
        double likeForLike = likeForLikePrice(bought) * inflated;
        String body = study.types().get(bought.vehicle().type()).spec().body().bodyType();
        return payer.forBus(body, price, likeForLike) / inflated;
    }

    /** Price of the engine bus that would have been bought; the new bus's own price where the line has no engine bus. */
    private double likeForLikePrice(FleetEvent.Bought bought) {
        int type = study.types().get(bought.outgoingType()).successor();
        int compared = study.types().get(type).engine().isPresent() ? type : bought.vehicle().type();
        return values.price(compared, bought.year());
    }

    void addForPorts(PlanInput.PortPurchase purchase, double cost) {
        purchase.programme().ifPresent(p -> {
            Programme payer = study.programmes().get(p);
            if (payer.paysIn(purchase.year())) {
                double inflated = inflated(purchase.year());
                credit(yardRow, purchase.year(), payer.forPorts(cost * inflated, purchase.count()) / inflated);
            }
        });
    }

    void addForWork(PlanInput.WorkOrder order, double cost) {
        order.programme().ifPresent(p -> {
            Programme payer = study.programmes().get(p);
            if (payer.paysIn(order.year())) {
                credit(yardRow, order.year(), payer.forWork(cost));
            }
        });
    }

    private double inflated(int year) {
        return study.money().rates().inflationFactor(study.money().time(CostCategory.FUNDING, year));
    }

    private void credit(int row, int year, double constant) {
        ledger.add(row, year, CostCategory.FUNDING, -constant);
    }
}
