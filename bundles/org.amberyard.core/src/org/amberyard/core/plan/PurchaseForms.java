package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.funding.Purchase;

/** What the lines of a plan cost as forms of prices: how they answer to each price by itself. */
final class PurchaseForms {
    private final List<PriceForm[]> parts = new ArrayList<>();
    private final List<PriceForm> likeForLike = new ArrayList<>();

    PurchaseForms(PurchaseLines lines, PricePoints points) {
        double[] prices = new double[points.size()];
        List<Purchase> free = lines.at(new PointBook(points, prices));
        List<List<Purchase>> ofOne = new ArrayList<>();
        for (int point = 0; point < prices.length; point++) {
            Arrays.fill(prices, 0);
            prices[point] = 1;
            ofOne.add(lines.at(new PointBook(points, prices)));
        }
        for (int line = 0; line < free.size(); line++) {
            PriceForm[] ofLine = new PriceForm[free.get(line).parts().size()];
            for (int part = 0; part < ofLine.length; part++) {
                int of = part;
                ofLine[part] = form(line, free, ofOne, purchase -> purchase.parts().get(of).value());
            }
            parts.add(ofLine);
            likeForLike.add(form(line, free, ofOne, p -> p.bus().map(NewBus::likeForLike).map(d -> d.value()).orElse(0.0)));
        }
    }

    private static PriceForm form(int line, List<Purchase> free, List<List<Purchase>> ofOne, ToDoubleFunction<Purchase> figure) {
        PriceForm.Builder form = new PriceForm.Builder();
        double constant = figure.applyAsDouble(free.get(line));
        form.add(constant);
        for (int point = 0; point < ofOne.size(); point++) {
            double quantity = figure.applyAsDouble(ofOne.get(point).get(line)) - constant;
            if (quantity != 0) {
                form.add(quantity, point);
            }
        }
        return form.build();
    }

    /** Cost of a line by part at prices. */
    double[] parts(int line, double[] prices) {
        PriceForm[] forms = parts.get(line);
        double[] costs = new double[forms.length];
        for (int part = 0; part < costs.length; part++) {
            costs[part] = forms[part].at(prices);
        }
        return costs;
    }

    /** Price of the like-for-like bus of a line; 0 for other lines. */
    double likeForLike(int line, double[] prices) {
        return likeForLike.get(line).at(prices);
    }
}
