package org.amberyard.model.io;

import java.util.List;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.FlatTariff;
import org.amberyard.model.depot.PortType;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.prices.CostIndex;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.IndexSubject;
import org.amberyard.model.prices.PricePath;
import org.amberyard.model.prices.PricesFactory;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.site.Site;
import org.amberyard.model.site.SiteFactory;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.vehicles.Fuel;

/** The study that a user begins with: whatever every study needs once, with the model's own default values. */
public final class StudyDefaults {
    /** What stands in until a tariff sheet is at hand; assumed, no source. */
    private static final double MONTHLY_CHARGE = 50;
    private static final double ENERGY_PRICE_PER_KWH = 0.12;

    private StudyDefaults() {
    }

    /**
     * A new study without routes, vehicle types and buses: settings, emission factors, a site with twelve months, a depot
     * with a flat tariff and one port type, one price path of each kind, and one plan, which is the baseline.
     */
    public static Study create() {
        Study study = StudyFactory.eINSTANCE.createStudy();
        study.setName("New study");
        study.setSettings(StudyFactory.eINSTANCE.createSettings());
        study.setEmissionFactors(StudyFactory.eINSTANCE.createEmissionFactors());
        study.setSite(site());
        study.setDepot(depot());
        addPrices(study.getPrices());
        Plan baseline = PlansFactory.eINSTANCE.createPlan();
        baseline.setName("Baseline");
        study.getPlans().add(baseline);
        study.setBaseline(baseline);
        return study;
    }

    private static Site site() {
        Site site = SiteFactory.eINSTANCE.createSite();
        site.setName("Site");
        for (Month month : Month.VALUES) {
            MonthClimate climate = SiteFactory.eINSTANCE.createMonthClimate();
            climate.setMonth(month);
            site.getClimate().add(climate);
        }
        return site;
    }

    private static Depot depot() {
        FlatTariff tariff = DepotFactory.eINSTANCE.createFlatTariff();
        tariff.setName("Flat tariff");
        tariff.setMonthlyCharge(MONTHLY_CHARGE);
        tariff.setEnergyPricePerKwh(ENERGY_PRICE_PER_KWH);
        PortType port = DepotFactory.eINSTANCE.createPortType();
        port.setName("AC port");
        Depot depot = DepotFactory.eINSTANCE.createDepot();
        depot.setName("Depot");
        depot.setTariff(tariff);
        depot.getPortTypes().add(port);
        return depot;
    }

    private static void addPrices(List<PricePath> prices) {
        for (Fuel fuel : Fuel.VALUES) {
            FuelPrice price = PricesFactory.eINSTANCE.createFuelPrice();
            price.setFuel(fuel);
            prices.add(price);
        }
        prices.add(PricesFactory.eINSTANCE.createFluidPrice());
        prices.add(PricesFactory.eINSTANCE.createPackPrice());
        for (IndexSubject subject : IndexSubject.VALUES) {
            CostIndex index = PricesFactory.eINSTANCE.createCostIndex();
            index.setSubject(subject);
            prices.add(index);
        }
    }
}
