package org.amberyard.model.validation;

import java.util.List;
import org.amberyard.model.prices.PricePath;
import org.amberyard.model.prices.PricePoint;
import org.amberyard.model.prices.PricesPackage.Literals;
import org.amberyard.model.study.Study;

/** The points of a price path rise from year to year, so that one line runs through them. */
final class PricePointsRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        study.getPrices().forEach(price -> check(price, findings));
        study.getLowCarbonCredits().forEach(credit -> check(credit, findings));
    }

    private static void check(PricePath price, Findings findings) {
        List<PricePoint> points = price.getPoints();
        for (int i = 1; i < points.size(); i++) {
            int year = points.get(i).getYear();
            if (points.subList(0, i).stream().anyMatch(p -> p.getYear() == year)) {
                findings.error(points.get(i), Literals.PRICE_POINT__YEAR, "the year has a point already; keep one.");
            } else if (year < points.get(i - 1).getYear()) {
                findings.warning(points.get(i), Literals.PRICE_POINT__YEAR, "it stands after "
                        + points.get(i - 1).getYear() + "; put the points in the order of the years.");
            }
        }
    }
}
