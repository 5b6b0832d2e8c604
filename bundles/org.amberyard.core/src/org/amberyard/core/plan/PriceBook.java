package org.amberyard.core.plan;

import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.why.Derivation;

/** Prices of a study by year, constant money; each is worked out once. Not for use from several threads. */
class PriceBook {
    private static final int TIMES = FlowTime.values().length;

    private final StudyInput study;
    private final double[][][] known = new double[PriceKind.values().length][][];

    PriceBook(StudyInput study) {
        this.study = study;
    }

    /** The study whose prices they are. */
    StudyInput study() {
        return study;
    }

    /** A price in a year at the time of a category; the year after the last one too, for what is sold at the end. */
    double at(UnitPrice price, int year, CostCategory category) {
        double[][] ofKind = known[price.kind().ordinal()];
        int place = price.of() * TIMES + category.time().ordinal();
        if (ofKind == null || ofKind.length <= place) {
            ofKind = grown(price.kind(), place);
        }
        double[] years = ofKind[place];
        if (years == null) {
            years = years(price, category);
            ofKind[place] = years;
        }
        return years[year];
    }

    /** Premium of a year over the value of a bus. */
    double premiumRate() {
        return study.rules().insuranceShare();
    }

    private double[][] grown(PriceKind kind, int place) {
        double[][] before = known[kind.ordinal()];
        double[][] after = new double[place + TIMES][];
        if (before != null) {
            System.arraycopy(before, 0, after, 0, before.length);
        }
        known[kind.ordinal()] = after;
        return after;
    }

    private double[] years(UnitPrice price, CostCategory category) {
        double[] years = new double[study.years() + 1];
        for (int year = 0; year < years.length; year++) {
            years[year] = price.kind().at(study, price.of(), year, category);
        }
        return years;
    }

    /** How a price comes about. */
    Derivation why(UnitPrice price, int year, CostCategory category) {
        return price.kind().why(study, price.of(), year, category);
    }
}
