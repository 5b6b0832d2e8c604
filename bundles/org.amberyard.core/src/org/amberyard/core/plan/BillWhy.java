package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BillComponent;
import org.amberyard.core.tariff.BillIndex;
import org.amberyard.core.tariff.BillLine;
import org.amberyard.core.tariff.BillParts;
import org.amberyard.core.tariff.BillUnit;
import org.amberyard.core.tariff.BillYear;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;
import org.amberyard.core.yard.YardYear;

/** How what the bills of a yard's year ask for comes about: by month, line by line. */
final class BillWhy {
    private final YardYear yard;
    private final ToDoubleFunction<BillParts> part;
    private final UnaryOperator<Bill> atPrices;

    private BillWhy(YardYear yard, ToDoubleFunction<BillParts> part, UnaryOperator<Bill> atPrices) {
        this.yard = yard;
        this.part = part;
        this.atPrices = atPrices;
    }

    /**
     * At base-date prices.
     *
     * @param yard the year
     * @param part what is asked about: what follows the energy, the demand or neither
     */
    BillWhy(YardYear yard, ToDoubleFunction<BillParts> part) {
        this(yard, part, bill -> bill);
    }

    /** The same when prices have risen. */
    BillWhy at(BillIndex index) {
        return new BillWhy(yard, part, bill -> bill.at(yard.input().metering().tariff(), index));
    }

    /** The year's bills; on a meter that the building shares less what it would be billed without charging. */
    Derivation of(String name) {
        Derivation metered = bills(yard.withoutCharging().isEmpty() ? name : name + ", charging and building together", yard.bills());
        return yard.withoutCharging().map(without -> difference(name, metered,
                bills(name + ", the building by itself", without))).orElse(metered);
    }

    private static Derivation difference(String name, Derivation with, Derivation without) {
        return Derivation.of(name, with.value() - without.value(), Derivation.MONEY, "the first less the second", with, without);
    }

    private Derivation bills(String name, BillYear year) {
        return Derivation.sum(name, Derivation.MONEY, year.bills().stream().map(atPrices).map(this::month).toList());
    }

    private Derivation month(Bill bill) {
        List<Derivation> lines = new ArrayList<>();
        bill.lines().stream().filter(line -> part.applyAsDouble(line.parts()) != 0).forEach(line -> lines.add(line(line)));
        return Derivation.sum(MonthNames.full(bill.month()), Derivation.MONEY, lines);
    }

    private Derivation line(BillLine line) {
        double amount = part.applyAsDouble(line.parts());
        InputRef tariff = new InputRef("Tariff", yard.input().metering().tariff().name(), "name");
        if (line.unit() == BillUnit.MONEY) {
            return Derivation.product(line.label(), Derivation.MONEY, Derivation.of("what it falls on", amount / line.price(),
                    Derivation.MONEY, "lines before it, as far as they follow the same"),
                    Derivation.input("share that the tariff asks for", line.price(), "share", tariff));
        }
        if (line.component() == BillComponent.MINIMUM) {
            return Derivation.of(line.label(), amount, Derivation.MONEY, "minimum bill of the month less the charges that count towards it");
        }
        String what = line.demand().map(d -> "billed: " + d.explanation()).orElse("metered in the hours of the line");
        Derivation price = Derivation.input("price in the tariff " + tariff.element(), line.price(), priceUnit(line.unit()), tariff);
        return Derivation.of(line.label(), amount, Derivation.MONEY, "quantity × price",
                Derivation.of("quantity", line.quantity(), unit(line.unit()), what), price);
    }

    private static String unit(BillUnit unit) {
        return switch (unit) {
            case KWH -> "kWh";
            case KW -> "kW";
            case DAY -> "day";
            default -> "month";
        };
    }

    private static String priceUnit(BillUnit unit) {
        return switch (unit) {
            case KWH -> "money/kWh";
            case KW -> "money/kW/month";
            case MONTH -> "money/month";
            case DAY -> "money/day";
            default -> Derivation.MONEY;
        };
    }
}
