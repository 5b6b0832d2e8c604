package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** Prices of what plans buy in money of the year in which they pay it, as programmes see them, with how they come about. */
final class PurchasePrices {
    private final PriceBook book;

    PurchasePrices(PriceBook book) {
        this.book = book;
    }

    /** A new bus of a type. */
    Derivation bus(int type, int year) {
        return paid("price of " + book.study().types().get(type).name(), 1, PriceKind.NEW_BUS.of(type), year,
                CostCategory.BUS_PURCHASE);
    }

    /** A used bus. */
    Derivation bus(UsedPrice used, int year) {
        return Derivation.product("price of the used bus", Derivation.MONEY, used.input(),
                book.why(used.path(), year, CostCategory.BUS_PURCHASE), inflation(year, CostCategory.BUS_PURCHASE));
    }

    /** Ports: hardware, then installation. */
    List<Derivation> ports(PlanInput.PortPurchase bought) {
        return List.of(
                paid("hardware", bought.count(), PriceKind.PORT_HARDWARE.of(bought.port()), bought.year(), CostCategory.PORTS),
                paid("installation", bought.count(), PriceKind.PORT_INSTALLATION.of(bought.port()), bought.year(),
                        CostCategory.PORTS));
    }

    /** A site work. */
    Derivation work(PlanInput.WorkOrder order) {
        return paid("price of the work", 1, PriceKind.SITE_WORK.of(order.work()), order.year(), CostCategory.SITE_WORKS);
    }

    /** Training or tools; they follow general inflation. */
    Derivation oneOff(PlanInput.OneOff cost) {
        return Derivation.product("cost of " + cost.name(), Derivation.MONEY, Derivation.input("amount", cost.amount(),
                Derivation.MONEY, new InputRef("OneOffCost", cost.name(), "amount")),
                book.why(PriceKind.MONEY.one(), cost.year(), CostCategory.TRAINING_AND_TOOLS),
                inflation(cost.year(), CostCategory.TRAINING_AND_TOOLS));
    }

    private Derivation paid(String name, int count, UnitPrice price, int year, CostCategory category) {
        Derivation number = Derivation.of("number bought", count, "", "step of the plan");
        return Derivation.product(name, Derivation.MONEY, number, book.why(price, year, category), inflation(year, category));
    }

    private Derivation inflation(int year, CostCategory category) {
        double time = book.study().money().time(category, year);
        return Derivation.of("general inflation to the time of payment", book.study().money().rates().inflationFactor(time), "",
                "(1 + inflation) to the years");
    }
}
