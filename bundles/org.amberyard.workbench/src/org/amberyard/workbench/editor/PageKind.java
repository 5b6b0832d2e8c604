package org.amberyard.workbench.editor;

import java.util.List;
import java.util.function.Function;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.funding.FundingPackage;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.site.SitePackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.amberyard.model.whatif.WhatifPackage;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;

/** The pages of the editor, in their order, and the kinds of element that each shows. */
public enum PageKind {
    /** Names, settings, site. */
    STUDY(Messages.Page_study, GeneralPage::new, StudyPackage.Literals.STUDY, StudyPackage.Literals.SETTINGS,
            SitePackage.Literals.SITE),
    /** Months and calendars. */
    CLIMATE(Messages.Page_climate, ClimatePage::new, SitePackage.Literals.MONTH_CLIMATE,
            SitePackage.Literals.SERVICE_CALENDAR),
    /** Routes and runs. */
    ROUTES(Messages.Page_routes, RoutesPage::new, RoutesPackage.Literals.ROUTE, RoutesPackage.Literals.RUN),
    /** Buses. */
    BUSES(Messages.Page_buses, BusesPage::new, FleetPackage.Literals.BUS),
    /** Trips. */
    TRIPS(Messages.Page_trips, TripsPage::new, RoutesPackage.Literals.TRIP),
    /** Consumption logs and drive traces. */
    MEASUREMENTS(Messages.Page_measurements, MeasurementsPage::new, FleetPackage.Literals.CONSUMPTION_LOG,
            RoutesPackage.Literals.DRIVE_TRACE),
    /** Tasks of the shop. */
    UPKEEP(Messages.Page_upkeep, UpkeepPage::new, FleetPackage.Literals.MAINTENANCE_TASK),
    /** Vehicle types. */
    TYPES(Messages.Page_types, VehicleTypesPage::new, VehiclesPackage.Literals.VEHICLE_TYPE),
    /** Service, ports, works, upgrades. */
    DEPOT(Messages.Page_depot, DepotPage::new, DepotPackage.Literals.DEPOT, DepotPackage.Literals.PORT_TYPE,
            DepotPackage.Literals.SITE_WORK),
    /** Tariffs and their charges. */
    TARIFFS(Messages.Page_tariffs, TariffsPage::new, DepotPackage.Literals.TARIFF, DepotPackage.Literals.TARIFF_CHARGE),
    /** The building's load. */
    BUILDING(Messages.Page_building, BuildingPage::new, DepotPackage.Literals.BUILDING_MONTH,
            DepotPackage.Literals.BUILDING_LOAD_DAY, DepotPackage.Literals.METER_DAY, DepotPackage.Literals.METER_BILL,
            DepotPackage.Literals.METER_BILL_LINE),
    /** Prices. */
    PRICES(Messages.Page_prices, PricesPage::new, PricesPackage.Literals.FUEL_PRICE, PricesPackage.Literals.FLUID_PRICE,
            PricesPackage.Literals.PACK_PRICE, PricesPackage.Literals.COST_INDEX),
    /** Funding. */
    FUNDING(Messages.Page_funding, FundingPage::new, FundingPackage.Literals.PROGRAMME,
            FundingPackage.Literals.BUS_AWARD, FundingPackage.Literals.LOW_CARBON_CREDIT,
            FundingPackage.Literals.OPERATING_AID),
    /** Emission factors. */
    AIR(Messages.Page_air, AirPage::new, StudyPackage.Literals.EMISSION_FACTORS),
    /** Plans. */
    PLANS(Messages.Page_plans, PlansPage::new, PlansPackage.Literals.PLAN, PlansPackage.Literals.REPLACEMENT,
            PlansPackage.Literals.PORT_PURCHASE, PlansPackage.Literals.WORK_ORDER, PlansPackage.Literals.ONE_OFF_COST),
    /** A plan by bus and year; its steps are found on the page of plans. */
    PLAN_GRID(Messages.Page_planGrid, PlanGridPage::new),
    /** What came of years that are over. */
    ACTUALS(Messages.Page_actuals, ActualsPage::new, StudyPackage.Literals.YEAR_ACTUALS,
            FleetPackage.Literals.BUS_RECORD),
    /** Uncertain inputs and scenarios. */
    WHAT_IF(Messages.Page_whatIf, WhatIfPage::new, WhatifPackage.Literals.WHAT_IF),
    /** Texts for applications. */
    NARRATIVE(Messages.Page_narrative, NarrativePage::new, StudyPackage.Literals.NARRATIVE),
    /** Notes on charts. */
    CHART_NOTES(Messages.Page_chartNotes, ChartNotesPage::new, StudyPackage.Literals.CHART_NOTE);

    private final String title;
    private final Function<PageSite, StudyPage> factory;
    private final List<EClass> kinds;

    PageKind(String title, Function<PageSite, StudyPage> factory, EClass... kinds) {
        this.title = title;
        this.factory = factory;
        this.kinds = List.of(kinds);
    }

    /** Title of the page. */
    public String title() {
        return title;
    }

    StudyPage newPage(PageSite site) {
        return factory.apply(site);
    }

    /** The page of an element: that of its kind or of the element that holds it. */
    public static PageKind of(EObject element) {
        for (EObject e = element; e != null; e = e.eContainer()) {
            for (PageKind page : values()) {
                EObject held = e;
                if (page.kinds.stream().anyMatch(k -> k.isInstance(held))) {
                    return page;
                }
            }
        }
        return STUDY;
    }
}
