package org.amberyard.model.validation;

import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.depot.FlatTariff;
import org.amberyard.model.prices.FluidPrice;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.PricePath;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** Prices typed in cents stand out by their size. */
final class CentsRule implements Rule {
    private static final double HIGH_PER_L = 5;
    private static final double HIGH_PER_KWH = 2;

    @Override
    public void check(Study study, Findings findings) {
        for (PricePath price : study.getPrices()) {
            if (price instanceof FuelPrice) {
                check(price, PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, HIGH_PER_L, findings);
            } else if (price instanceof FluidPrice) {
                check(price, PricesPackage.Literals.FLUID_PRICE__PRICE_PER_L, HIGH_PER_L, findings);
            }
        }
        if (study.getDepot() != null && study.getDepot().getTariff() instanceof FlatTariff tariff) {
            check(tariff, DepotPackage.Literals.FLAT_TARIFF__ENERGY_PRICE_PER_KWH, HIGH_PER_KWH, findings);
        }
    }

    private static void check(EObject element, EAttribute field, double high, Findings findings) {
        double price = (double) element.eGet(field);
        if (price > high) {
            findings.warning(element, field, findings.fact(element, field) + ", which looks like cents; was "
                    + findings.value(element, field, price / 100) + " meant?");
        }
    }
}
