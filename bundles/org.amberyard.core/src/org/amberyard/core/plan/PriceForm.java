package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A figure as a function of prices at points in time: a constant, quantities at prices, and multiples of the lesser of two such. */
final class PriceForm {
    private final double constant;
    private final int[] points;
    private final double[] quantities;
    private final Lesser[] lessers;

    private record Lesser(double factor, PriceForm one, PriceForm other) {
    }

    private PriceForm(Builder of) {
        constant = of.constant;
        points = of.terms.keySet().stream().mapToInt(i -> i).toArray();
        quantities = of.terms.values().stream().mapToDouble(q -> q).toArray();
        lessers = of.lessers.toArray(Lesser[]::new);
    }

    /** The figure at prices, each at its place. */
    double at(double[] prices) {
        double sum = constant;
        for (int i = 0; i < points.length; i++) {
            sum += quantities[i] * prices[points[i]];
        }
        for (Lesser lesser : lessers) {
            sum += lesser.factor * Math.min(lesser.one.at(prices), lesser.other.at(prices));
        }
        return sum;
    }

    /** True when prices do not move it. */
    boolean isConstant() {
        return points.length == 0 && lessers.length == 0;
    }

    /** Adds up a form. */
    static final class Builder {
        private final Map<Integer, Double> terms = new TreeMap<>();
        private final List<Lesser> lessers = new ArrayList<>();
        private double constant;

        void add(double money) {
            constant += money;
        }

        /** Adds a quantity at the price at a place. */
        void add(double quantity, int point) {
            terms.merge(point, quantity, Double::sum);
        }

        void addLesser(double factor, PriceForm one, PriceForm other) {
            if (one.isConstant() && other.isConstant()) {
                constant += factor * Math.min(one.constant, other.constant);
            } else {
                lessers.add(new Lesser(factor, one, other));
            }
        }

        PriceForm build() {
            return new PriceForm(this);
        }
    }
}
