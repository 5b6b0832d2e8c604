package org.amberyard.core.plan;

import java.util.List;
import java.util.function.Supplier;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** An amount of money as quantities and prices, so that it can be worked out anew when only prices have changed. */
sealed interface Amount permits Amount.Priced, Amount.Sum, Amount.Lesser, Amount.Credit, Amount.Premium, Amount.PaidIn,
        Amount.Times, LiftedCharges {

    /** The amount in a year at the time of a category, constant money. */
    double at(PriceBook book, int year, CostCategory category);

    /** How it comes about. */
    Derivation why(PriceBook book, int year, CostCategory category);

    /** True when it is a sum of quantities at prices. */
    default boolean linear() {
        return true;
    }

    /**
     * Tells the quantities and prices of an amount.
     *
     * @param factor factor on all quantities
     * @param year year in which it counts
     * @param category category in which it counts
     * @param terms told of each quantity
     */
    void terms(double factor, int year, CostCategory category, Terms terms);

    /** Takes the terms of an amount. */
    interface Terms {
        /**
         * A quantity at a price.
         *
         * @param insured true where not the price but the premium for it counts
         */
        void add(double quantity, UnitPrice price, int year, CostCategory category, boolean insured);

        /**
         * A multiple of the lesser of two amounts; linear amounts have none.
         *
         * @param insured true where not the amount but the premium for it counts
         */
        default void addLesser(double factor, Lesser lesser, int year, CostCategory category, boolean insured) {
            throw new IllegalStateException(lesser.name() + " is no sum of quantities at prices");
        }
    }

    /** A quantity at a price. */
    static Amount of(double quantity, UnitPrice price, Supplier<Derivation> counted) {
        return new Priced(quantity, price, counted);
    }

    /** A quantity at a price that is told by its name alone. */
    static Amount of(double quantity, UnitPrice price, String name, String unit) {
        return new Priced(quantity, price, () -> Derivation.of(name, quantity, unit, ""));
    }

    /**
     * A quantity at a price.
     *
     * @param quantity quantity; negative for a credit
     * @param price its price
     * @param counted how the quantity comes about
     */
    record Priced(double quantity, UnitPrice price, Supplier<Derivation> counted) implements Amount {

        @Override
        public double at(PriceBook book, int year, CostCategory category) {
            return quantity * book.at(price, year, category);
        }

        @Override
        public void terms(double factor, int year, CostCategory category, Terms terms) {
            terms.add(factor * quantity, price, year, category, false);
        }

        @Override
        public Derivation why(PriceBook book, int year, CostCategory category) {
            Derivation of = counted.get();
            return Derivation.product(of.name() + ", cost", Derivation.MONEY, of, book.why(price, year, category));
        }
    }

    /**
     * A sum.
     *
     * @param name what it is
     * @param parts its parts
     */
    record Sum(String name, List<Amount> parts) implements Amount {

        @Override
        public double at(PriceBook book, int year, CostCategory category) {
            double sum = 0;
            for (Amount part : parts) {
                sum += part.at(book, year, category);
            }
            return sum;
        }

        @Override
        public boolean linear() {
            return parts.stream().allMatch(Amount::linear);
        }

        @Override
        public void terms(double factor, int year, CostCategory category, Terms terms) {
            parts.forEach(p -> p.terms(factor, year, category, terms));
        }

        @Override
        public Derivation why(PriceBook book, int year, CostCategory category) {
            return Derivation.sum(name, Derivation.MONEY, parts.stream().map(p -> p.why(book, year, category)).toList());
        }
    }

    /** The lesser of two amounts. */
    record Lesser(String name, Amount one, Amount other) implements Amount {

        @Override
        public double at(PriceBook book, int year, CostCategory category) {
            return Math.min(one.at(book, year, category), other.at(book, year, category));
        }

        @Override
        public boolean linear() {
            return false;
        }

        @Override
        public void terms(double factor, int year, CostCategory category, Terms terms) {
            terms.addLesser(factor, this, year, category, false);
        }

        @Override
        public Derivation why(PriceBook book, int year, CostCategory category) {
            return Derivation.of(name, at(book, year, category), Derivation.MONEY, "the lesser of the two",
                    one.why(book, year, category), other.why(book, year, category));
        }
    }

    /** What comes in: an amount with the other sign. */
    record Credit(Amount of) implements Amount {

        @Override
        public double at(PriceBook book, int year, CostCategory category) {
            return -of.at(book, year, category);
        }

        @Override
        public boolean linear() {
            return of.linear();
        }

        @Override
        public void terms(double factor, int year, CostCategory category, Terms terms) {
            of.terms(-factor, year, category, terms);
        }

        @Override
        public Derivation why(PriceBook book, int year, CostCategory category) {
            Derivation credited = of.why(book, year, category);
            return Derivation.of(credited.name() + ", credited", -credited.value(), Derivation.MONEY, "with the sign of a credit",
                    credited);
        }
    }

    /** Premium for a bus: a share of its value in the year. */
    record Premium(Amount value) implements Amount {

        @Override
        public double at(PriceBook book, int year, CostCategory category) {
            return book.premiumRate() * value.at(book, year, category);
        }

        @Override
        public boolean linear() {
            return value.linear();
        }

        @Override
        public void terms(double factor, int year, CostCategory category, Terms terms) {
            value.terms(factor, year, category, new Terms() {
                @Override
                public void add(double quantity, UnitPrice price, int at, CostCategory as, boolean insured) {
                    terms.add(quantity, price, at, as, true);
                }

                @Override
                public void addLesser(double times, Lesser lesser, int at, CostCategory as, boolean insured) {
                    terms.addLesser(times, lesser, at, as, true);
                }
            });
        }

        @Override
        public Derivation why(PriceBook book, int year, CostCategory category) {
            return Derivation.product("premium", Derivation.MONEY, value.why(book, year, category),
                    Derivation.input("premium as a share of the value", book.study().rules().insuranceShare(), "",
                            new InputRef("Settings", "", "insuranceShare")));
        }
    }

    /** An amount at the prices of another year than the one in which it counts. */
    record PaidIn(int year, CostCategory category, Amount of) implements Amount {

        @Override
        public double at(PriceBook book, int counts, CostCategory countedAs) {
            return of.at(book, year, category);
        }

        @Override
        public boolean linear() {
            return of.linear();
        }

        @Override
        public void terms(double factor, int counts, CostCategory countedAs, Terms terms) {
            of.terms(factor, year, category, terms);
        }

        @Override
        public Derivation why(PriceBook book, int counts, CostCategory countedAs) {
            return of.why(book, year, category);
        }
    }

    /** A multiple of an amount. */
    record Times(String name, double factor, Amount of) implements Amount {

        @Override
        public double at(PriceBook book, int year, CostCategory category) {
            return factor * of.at(book, year, category);
        }

        @Override
        public boolean linear() {
            return of.linear();
        }

        @Override
        public void terms(double times, int year, CostCategory category, Terms terms) {
            of.terms(times * factor, year, category, terms);
        }

        @Override
        public Derivation why(PriceBook book, int year, CostCategory category) {
            return Derivation.product(name, Derivation.MONEY, Derivation.of("times", factor, "", ""), of.why(book, year, category));
        }
    }
}
